package lampproof.waveform;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column title taken apart into name and unit: {@code Time (ms)}, {@code U [kV]}, {@code t_ns}.
 *
 * <p>A node or element in brackets, as in {@code v(ms)}, is no unit, nor is an index, as in {@code v_C}: behind the
 * underscore of a short name only the unit of a time, or one with a prefix, counts.
 *
 * @param title the title as the file writes it
 * @param name the title without the unit
 * @param unit the unit as written; empty when there is none that is known
 * @param factor what turns a number in this unit into SI base units; not a number for a time in an unknown unit
 */
record UnitLabel(String title, String name, String unit, double factor) {

    private static final Map<String, Double> PREFIXES =
            Map.of("", 1.0, "p", 1e-12, "n", 1e-9, "u", 1e-6, "µ", 1e-6, "μ", 1e-6, "m", 1e-3, "k", 1e3, "M", 1e6);
    private static final Pattern SYMBOL = Pattern.compile("([pnuµμmkM]?)(s|sec|V|A|W|Hz|Ohm|Ω|lx|lm|J|C)");
    private static final Map<String, Double> WORDS = Map.ofEntries(
            Map.entry("second", 1.0),
            Map.entry("seconds", 1.0),
            Map.entry("sec", 1.0),
            Map.entry("millisecond", 1e-3),
            Map.entry("milliseconds", 1e-3),
            Map.entry("microsecond", 1e-6),
            Map.entry("microseconds", 1e-6),
            Map.entry("nanosecond", 1e-9),
            Map.entry("nanoseconds", 1e-9),
            Map.entry("volt", 1.0),
            Map.entry("volts", 1.0),
            Map.entry("millivolt", 1e-3),
            Map.entry("ampere", 1.0),
            Map.entry("amperes", 1.0),
            Map.entry("amp", 1.0),
            Map.entry("amps", 1.0),
            Map.entry("milliampere", 1e-3),
            Map.entry("watt", 1.0),
            Map.entry("watts", 1.0));
    private static final Pattern BRACKETED = Pattern.compile("(.+?)(\\s*)[(\\[]\\s*([^()\\[\\]]+?)\\s*[)\\]]");
    private static final Pattern TAILED = Pattern.compile("(.+?)(?:_|\\s*/\\s*|\\s+in\\s+)([^\\s_/]+)");
    private static final Pattern FUNCTION = Pattern.compile("(?i)[vipnwdgsbe][a-z]{0,3}\\d?|.*[^\\w\\s.].*");

    /** Takes a title apart. */
    static UnitLabel of(String title) {
        Matcher bracketed = BRACKETED.matcher(title);
        if (bracketed.matches()) {
            boolean apart = !bracketed.group(2).isEmpty();
            boolean function = FUNCTION.matcher(bracketed.group(1)).matches();
            return apart || !function ? split(title, bracketed.group(1), bracketed.group(3)) : bare(title);
        }
        Matcher tailed = TAILED.matcher(title);
        return tailed.matches() && tailedByUnit(tailed.group(1), tailed.group(2))
                ? split(title, tailed.group(1), tailed.group(2))
                : bare(title);
    }

    private static boolean tailedByUnit(String name, String symbol) {
        boolean word = name.length() > 2 || ScaleName.time(name);
        return factor(symbol) > 0 && (word || factor(symbol) != 1);
    }

    /** Whether a cell of a units row holds a unit, in brackets or not; an empty cell does. */
    static boolean isUnit(String cell) {
        return cell.isEmpty() || factor(unbracketed(cell)) > 0;
    }

    /** This title with the unit of a units row. */
    UnitLabel withUnit(String cell) {
        String symbol = unbracketed(cell);
        if (factor(symbol) > 0) {
            return new UnitLabel(title, name, symbol, factor(symbol));
        }
        return ScaleName.time(name) && !symbol.isEmpty() ? new UnitLabel(title, name, symbol, Double.NaN) : this;
    }

    private static UnitLabel split(String title, String name, String symbol) {
        double factor = factor(symbol);
        if (factor == 0 && ScaleName.time(name)) {
            return new UnitLabel(title, name.strip(), symbol, Double.NaN);
        }
        return factor > 0 ? new UnitLabel(title, name.strip(), symbol, factor) : bare(title);
    }

    private static UnitLabel bare(String title) {
        return new UnitLabel(title, title, "", 1);
    }

    private static String unbracketed(String cell) {
        return cell.replaceAll("^[(\\[]\\s*|\\s*[)\\]]$", "");
    }

    /** The factor of a unit, 0 when it is not known. */
    private static double factor(String symbol) {
        Matcher matcher = SYMBOL.matcher(symbol);
        if (matcher.matches()) {
            return PREFIXES.get(matcher.group(1));
        }
        return WORDS.getOrDefault(symbol.toLowerCase(Locale.ROOT), 0.0);
    }
}
