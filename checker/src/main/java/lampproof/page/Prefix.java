package lampproof.page;

import java.util.Arrays;

/** A prefix of a unit. */
enum Prefix {
    PICO("p", 1e-12),
    NANO("n", 1e-9),
    MICRO("\u00b5", 1e-6),
    MILLI("m", 1e-3),
    NONE("", 1),
    KILO("k", 1e3),
    MEGA("M", 1e6);

    private final String symbol;
    private final double factor;

    Prefix(String symbol, double factor) {
        this.symbol = symbol;
        this.factor = factor;
    }

    /** The prefix that leaves one to three digits before the point; none for zero and what is not finite. */
    static Prefix of(double value) {
        double size = Math.abs(value) * (1 + 1e-9);
        if (size == 0 || !Double.isFinite(size)) {
            return NONE;
        }
        return Arrays.stream(values())
                .filter(prefix -> prefix.factor <= size)
                .reduce((smaller, larger) -> larger)
                .orElse(PICO);
    }

    String symbol() {
        return symbol;
    }

    double factor() {
        return factor;
    }
}
