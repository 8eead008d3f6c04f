package lampproof.design;

import lampproof.spec.Keyword;

/** When the switch closes and opens. */
public enum Law implements Keyword {
    /** Critical conduction: constant on-time, the next cycle when the inductor current has come back to zero. */
    BOUNDARY,
    /** Fixed frequency and on-time, discontinuous. */
    FIXED_DUTY,
    /** Fixed frequency; the switch opens at a current reference. */
    PEAK_CURRENT,
    /** The switch opens at a current reference and closes after a fixed time. */
    FIXED_OFF_TIME;

    /** Whether the law's set-point is a peak current [A]; otherwise it is an on-time [s]. */
    public boolean setsCurrent() {
        return this == PEAK_CURRENT || this == FIXED_OFF_TIME;
    }
}
