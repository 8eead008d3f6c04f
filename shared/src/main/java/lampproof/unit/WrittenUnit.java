package lampproof.unit;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A unit as a stranger's table writes it: {@code mA}, {@code kV}, {@code milliamps}, {@code mA rms}.
 *
 * <p>Letter case counts if it alone distinguishes two units. Instruments that write capitals throughout write {@code
 * MA} and {@code MS}; no lamp has megaamperes, so these are milli. {@code M} is mega for frequency and resistance.
 *
 * @param text the unit as written; empty when there is none
 * @param base symbol of the unit without its prefix; empty when it is not known
 * @param factor the factor from this unit to the base unit [-]; 1 when it is not known
 */
public record WrittenUnit(String text, String base, double factor) {

    /** No unit is written. */
    public static final WrittenUnit NONE = new WrittenUnit("", "", 1);

    private static final String SECOND = "s";

    private static final Map<String, String> BASES = Map.ofEntries(
            Map.entry("s", SECOND),
            Map.entry("sec", SECOND),
            Map.entry("secs", SECOND),
            Map.entry("second", SECOND),
            Map.entry("seconds", SECOND),
            Map.entry("v", "V"),
            Map.entry("volt", "V"),
            Map.entry("volts", "V"),
            Map.entry("a", "A"),
            Map.entry("amp", "A"),
            Map.entry("amps", "A"),
            Map.entry("ampere", "A"),
            Map.entry("amperes", "A"),
            Map.entry("w", "W"),
            Map.entry("watt", "W"),
            Map.entry("watts", "W"),
            Map.entry("hz", "Hz"),
            Map.entry("hertz", "Hz"),
            Map.entry("ohm", "Ohm"),
            Map.entry("ohms", "Ohm"),
            Map.entry("ω", "Ω"),
            Map.entry("lx", "lx"),
            Map.entry("lux", "lx"),
            Map.entry("lm", "lm"),
            Map.entry("j", "J"),
            Map.entry("c", "C"));

    private static final Pattern WRITTEN = Pattern.compile(
            "(pico|nano|micro|milli|kilo|mega|[pnuµμmk]?)(" + String.join("|", BASES.keySet())
                    + ")\\.?(?:\\s*rms|\\s+(?:pk|peak|pp|p-p|ac|dc|avg|mean))?",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    private static final Pattern SYMBOL = Pattern.compile("[pnuµμmk]?(s|sec|V|A|W|Hz|Ohm|Ω|lx|lm|J|C)|MΩ");

    /** Units of one letter that are read in either case, and the prefixes with which they are. */
    private static final Set<String> EITHER_CASE = Set.of("s", "V", "A", "W");

    private static final Set<String> RESISTANCE = Set.of("Ohm", "Ω");

    private static final String PREFIXES_IN_EITHER_CASE = "uµμmk";

    /** Reads a unit. */
    public static WrittenUnit of(String text) {
        Matcher written = WRITTEN.matcher(text);
        if (!written.matches()) {
            return unknown(text);
        }
        String prefix = written.group(1);
        String base = BASES.get(written.group(2).toLowerCase(Locale.ROOT));
        boolean clear = written.group(2).length() > 1
                || SYMBOL.matcher(prefix + written.group(2)).matches()
                || eitherCase(prefix, base);
        return clear ? new WrittenUnit(text, base, factor(prefix, base)) : unknown(text);
    }

    /** Whether its meaning is known. */
    public boolean known() {
        return !base.isEmpty();
    }

    /** Whether there is a text that is not a known unit. */
    public boolean unclear() {
        return !known() && !text.isEmpty();
    }

    /** Whether it is a unit of time. */
    public boolean ofTime() {
        return base.equals(SECOND);
    }

    /** Whether it is written as a symbol, letter case included, as in {@code mA}. */
    public boolean symbol() {
        return SYMBOL.matcher(text).matches();
    }

    private static WrittenUnit unknown(String text) {
        return new WrittenUnit(text, "", 1);
    }

    private static boolean eitherCase(String prefix, String base) {
        return EITHER_CASE.contains(base)
                && (PREFIXES_IN_EITHER_CASE.contains(prefix.toLowerCase(Locale.ROOT))
                        || (prefix.equalsIgnoreCase("n") && base.equals(SECOND)));
    }

    private static double factor(String prefix, String base) {
        boolean mega =
                base.equals("Hz") ? prefix.equalsIgnoreCase("m") : prefix.equals("M") && RESISTANCE.contains(base);
        return mega
                ? Prefix.MEGA.factor()
                : Prefix.read(prefix.toLowerCase(Locale.ROOT)).orElseThrow().factor();
    }
}
