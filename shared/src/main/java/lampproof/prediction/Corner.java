package lampproof.prediction;

import java.util.Locale;

/** The line voltage that a prediction is made for. */
public enum Corner {
    /** The typical line voltage. */
    NOMINAL,
    /** The least line voltage of the spec. */
    LOW_LINE,
    /** The greatest line voltage of the spec. */
    HIGH_LINE;

    /** The word in tables. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
