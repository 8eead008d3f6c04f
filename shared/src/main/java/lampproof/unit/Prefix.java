package lampproof.unit;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** An SI prefix (BIPM, The International System of Units, 9th edition, 2019, table 7); only those that a lamp needs. */
public enum Prefix {
    FEMTO("f", -15),
    PICO("p", -12),
    NANO("n", -9),
    MICRO("u", -6),
    MILLI("m", -3),
    NONE("", 0),
    KILO("k", 3),
    MEGA("M", 6),
    GIGA("G", 9),
    TERA("T", 12);

    private static final Set<String> WITHOUT_PREFIX = Set.of("", "1", "%", "deg", "degC", "K", "dB", "dBuV");

    private final String symbol;
    private final String word;
    private final int exponent;
    private final double factor;

    Prefix(String symbol, int exponent) {
        this.symbol = symbol;
        this.exponent = exponent;
        this.word = name().toLowerCase(Locale.ROOT);
        this.factor = Double.parseDouble("1e" + exponent);
    }

    /** The prefix that leaves one to three digits of a value [the unit] before the point; none for zero and what is not finite. */
    public static Prefix of(double value, String unit) {
        return value == 0 || !Double.isFinite(value)
                ? NONE
                : ofMagnitude(Decimal.of(value).rounded(9).magnitude(), unit);
    }

    /** The prefix for a number whose first digit has this power of ten; times go from picoseconds to seconds. */
    static Prefix ofMagnitude(int magnitude, String unit) {
        if (WITHOUT_PREFIX.contains(unit)) {
            return NONE;
        }
        return unit.equals("s") ? largest(magnitude, PICO, NONE) : largest(magnitude, FEMTO, TERA);
    }

    private static Prefix largest(int magnitude, Prefix least, Prefix greatest) {
        return Arrays.stream(values())
                .filter(prefix -> least.exponent <= prefix.exponent && prefix.exponent <= greatest.exponent)
                .filter(prefix -> prefix == least || prefix.exponent <= magnitude)
                .reduce((smaller, larger) -> larger)
                .orElseThrow();
    }

    /** The prefix that a text stands for: its symbol, either micro sign, or its word in lower case. */
    static Optional<Prefix> read(String text) {
        String symbol = text.replace('\u00b5', 'u').replace('\u03bc', 'u');
        return Arrays.stream(values())
                .filter(prefix -> prefix.symbol.equals(symbol) || prefix.word.equals(symbol))
                .findFirst();
    }

    /** The symbol in ASCII: micro is u. */
    public String symbol() {
        return symbol;
    }

    /** The symbol with the micro sign. */
    public String sign() {
        return this == MICRO ? "\u00b5" : symbol;
    }

    /** The power of ten. */
    public int exponent() {
        return exponent;
    }

    /** What a number with this prefix is multiplied by [-]. */
    public double factor() {
        return factor;
    }
}
