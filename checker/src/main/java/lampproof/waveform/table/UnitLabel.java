package lampproof.waveform.table;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.unit.WrittenUnit;
import lampproof.waveform.ScaleName;

/**
 * A column title, split into name and unit: {@code Time (ms)}, {@code U [kV]}, {@code t_ns}, {@code Current, mA}.
 *
 * <p>A node or element in brackets, as in {@code v(ms)}, is not a unit, nor is an index, as in {@code v_C}: after a
 * mark or a blank only a unit counts that has a prefix or is that of the quantity in the name.
 *
 * @param title the title as the file writes it
 * @param name the title without the unit; the whole title where its unit is not known
 * @param unit the unit
 */
record UnitLabel(String title, String name, WrittenUnit unit) {

    private static final String BRACKETS =
            "(?<gap>\\s*)(?<open>[(\\[<{])\\s*(?<unit>[^()\\[\\]<>{}]+?)\\s*[)\\]>}](?<rest>\\s+.*)?";
    private static final Pattern FIRST_BRACKETS = Pattern.compile("(?<name>.+?)" + BRACKETS);
    private static final Pattern LAST_BRACKETS = Pattern.compile("(?<name>.+)" + BRACKETS);
    private static final Pattern TAILED = Pattern.compile(
            "(?:in\\s+|(?<name>.+?)(?<mark>_|\\s*/\\s*|\\s+in\\s+|\\s*,\\s*|\\s+|-))(?<unit>[^\\s_/,-]+)");
    private static final Pattern GLUED = Pattern.compile("(?<name>[iuvpIUVP])(?<unit>[uµmk][AVW])");
    private static final Pattern FUNCTION = Pattern.compile("(?i)[vipnwdgsbe][a-z]{0,3}\\d?|.*[^\\w\\s.].*");
    private static final Pattern INDEX = Pattern.compile("\\d+");

    /** Names that say by a letter what they are, of a node or not; letters after a mark may be an index. */
    private static final Pattern SYMBOL = Pattern.compile(".{0,2}|[uvipUVIP]\\([^()]*\\)");

    /** Marks after which letters are an index or a number of a channel as often as a unit. */
    private static final Pattern LOOSE = Pattern.compile("\\s*[,-]?\\s*");

    /** What may follow the letter of a quantity: an index, or a node or element in brackets. */
    private static final String OF_WHAT = "([a-z0-9]{0,3}|\\([^()]*\\))";

    /** What the name of a column says about the unit of its numbers. */
    private static final Map<Pattern, String> QUANTITIES = Map.of(
            Pattern.compile("(?i)[uv]" + OF_WHAT + "|.*(volt|spannung|tension).*"), "V",
            Pattern.compile("(?i)i" + OF_WHAT + "|.*(curr|(?<!l)amp|strom|courant).*"), "A",
            Pattern.compile("(?i)p" + OF_WHAT + "|.*(power|watt|leistung|puissance).*"), "W");

    /** Splits a title. */
    static UnitLabel of(String title) {
        Matcher last = LAST_BRACKETS.matcher(title);
        if (last.matches() && WrittenUnit.of(last.group("unit")).known()) {
            return bracketed(title, last);
        }
        Matcher first = FIRST_BRACKETS.matcher(title);
        if (first.matches()) {
            return bracketed(title, first);
        }
        Matcher tailed = TAILED.matcher(title);
        if (tailed.matches()) {
            return tailed(title, tailed, tailed.group("mark"));
        }
        Matcher glued = GLUED.matcher(title);
        return glued.matches() ? tailed(title, glued, "") : unnamed(title);
    }

    /** Whether the column is time. */
    boolean time() {
        return ScaleName.time(name) || (name.isEmpty() && unit.ofTime());
    }

    /** This title above a column that is not time: a unit of time is then part of its name. */
    UnitLabel ofSignal() {
        return unit.ofTime() ? bare(title) : this;
    }

    /** The unit that a cell of a units row holds, in brackets or not. */
    static WrittenUnit unit(String cell) {
        return WrittenUnit.of(cell.replaceAll("^[(\\[<{]\\s*|\\s*[)\\]>}]$", ""));
    }

    /** Whether a cell of a units row holds a unit; an empty cell does. */
    static boolean isUnit(String cell) {
        return cell.isEmpty() || unit(cell).known();
    }

    /** This title with the unit of a units row; unchanged where that says less than the title. */
    UnitLabel withUnit(String cell) {
        WrittenUnit below = unit(cell);
        return below.known() || (below.unclear() && !unit.known()) ? new UnitLabel(title, name, below) : this;
    }

    private static UnitLabel bracketed(String title, Matcher parts) {
        String name = parts.group("name");
        String rest = parts.group("rest") == null ? "" : parts.group("rest");
        WrittenUnit unit = WrittenUnit.of(parts.group("unit"));
        boolean round = parts.group("open").equals("(") && parts.group("gap").isEmpty();
        if (round && FUNCTION.matcher(name).matches()) {
            boolean meant = unit.symbol() && rest.isEmpty() && says(name, unit);
            return meant ? new UnitLabel(title, name, unit) : bare(title);
        }
        if (unit.known() || ScaleName.time(name)) {
            return new UnitLabel(title, name.strip() + rest, unit);
        }
        boolean index = INDEX.matcher(unit.text()).matches() || !rest.isEmpty();
        return index ? bare(title) : new UnitLabel(title, title, unit);
    }

    private static UnitLabel tailed(String title, Matcher parts, String mark) {
        WrittenUnit unit = WrittenUnit.of(parts.group("unit"));
        String name = parts.group("name") == null ? "" : parts.group("name");
        boolean word = !SYMBOL.matcher(name).matches();
        boolean clear = unit.factor() != 1
                ? word || quantity(name).isEmpty()
                : word && !LOOSE.matcher(mark).matches();
        boolean meant = unit.known() && (name.isEmpty() || clear || says(name, unit));
        return meant ? new UnitLabel(title, name.strip(), unit) : bare(title);
    }

    /** A title that is nothing but a symbol with a prefix, as in {@code mA}; without one it may be the name of a node. */
    private static UnitLabel unnamed(String title) {
        WrittenUnit unit = unit(title);
        boolean meant = unit.symbol() && unit.factor() != 1 && QUANTITIES.containsValue(unit.base());
        return meant ? new UnitLabel(title, title, unit) : bare(title);
    }

    private static boolean says(String name, WrittenUnit unit) {
        return quantity(name).equals(unit.base());
    }

    /** The unit of the quantity in a name; empty if unknown. */
    private static String quantity(String name) {
        return ScaleName.time(name)
                ? "s"
                : QUANTITIES.entrySet().stream()
                        .filter(entry -> entry.getKey().matcher(name).matches())
                        .map(Map.Entry::getValue)
                        .findFirst()
                        .orElse("");
    }

    private static UnitLabel bare(String title) {
        return new UnitLabel(title, title, WrittenUnit.NONE);
    }
}
