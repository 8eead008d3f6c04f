package lampproof.unit;

import static java.util.Map.entry;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/**
 * The scale factors of SPICE netlists: letters behind a number, in either case. {@code M} is milli and {@code MEG} is mega.
 * Atto is left out: most versions of ngspice do not know it, and an A behind a number is mostly an ampere.
 */
public final class SpiceScale {

    private static final Map<String, Integer> EXPONENTS = Map.ofEntries(
            entry("t", 12),
            entry("g", 9),
            entry("meg", 6),
            entry("k", 3),
            entry("m", -3),
            entry("u", -6),
            entry("n", -9),
            entry("p", -12),
            entry("f", -15));

    private SpiceScale() {}

    /** The power of ten of the letters; nothing when they are no scale factor. */
    public static OptionalInt exponent(String letters) {
        Integer exponent = EXPONENTS.get(letters.toLowerCase(Locale.ROOT));
        return exponent == null ? OptionalInt.empty() : OptionalInt.of(exponent);
    }
}
