package lampproof.design;

/** When the switch closes and opens. */
public enum Law {
    /** Critical conduction: constant on-time, the next cycle when the inductor current has come back to zero. */
    BOUNDARY("boundary"),
    /** Fixed frequency and on-time, discontinuous. */
    FIXED_DUTY("fixed-duty"),
    /** Fixed frequency; the switch opens at a current reference. */
    PEAK_CURRENT("peak-current"),
    /** The switch opens at a current reference and closes after a fixed time. */
    FIXED_OFF_TIME("fixed-off-time");

    private final String word;

    Law(String word) {
        this.word = word;
    }

    /** The word for it in a spec. */
    public String word() {
        return word;
    }

    /** Whether the law's set-point is a peak current [A]; otherwise it is an on-time [s]. */
    public boolean setsCurrent() {
        return this == PEAK_CURRENT || this == FIXED_OFF_TIME;
    }
}
