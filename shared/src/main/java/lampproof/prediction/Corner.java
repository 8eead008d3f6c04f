package lampproof.prediction;

import lampproof.spec.Keyword;

/** The line voltage that a prediction is made for. */
public enum Corner implements Keyword {
    /** The typical line voltage. */
    NOMINAL("the typical line voltage"),
    /** The least line voltage of the spec. */
    LOW_LINE("the least line voltage"),
    /** The greatest line voltage of the spec. */
    HIGH_LINE("the greatest line voltage");

    private final String phrase;

    Corner(String phrase) {
        this.phrase = phrase;
    }

    /** The line voltage in words. */
    public String phrase() {
        return phrase;
    }
}
