package lampproof.prediction;

/** How closely figures of a kind can be predicted, and why. */
@SuppressWarnings("ImmutableEnumChecker")
public enum Grade {
    /** A mean or rms value. */
    MEAN(
            Tolerance.share(0.02),
            "averages over cycles; the model neglects filter resonance and switching ripple on the bus"),
    /** A greatest or least value. */
    PEAK(Tolerance.share(0.04), "a single instant; the model neglects filter ringing and jitter of the control cell"),
    /** A frequency or a time. */
    TIMING(Tolerance.share(0.04), "depends on peak current and output voltage, each with its own error"),
    /** A power factor or displacement factor. */
    POWER_FACTOR(Tolerance.width(0.01), "a ratio near 1; the distance from 1 matters"),
    /** Distortion or flicker in per cent. */
    PERCENT(Tolerance.width(2), "percentage points; determined near the zero crossing of the line"),
    /** A loss of one part. */
    LOSS(Tolerance.share(0.05), "a small difference of large powers, or the square of a current with an error of 2 %"),
    /** The loss of all parts, or the efficiency. */
    EFFICIENCY(Tolerance.width(1), "percentage points; the total loss has an error below 10 %"),
    /** An angle in degrees. */
    ANGLE(Tolerance.width(5), "the bridge turns on and off while the filter rings"),
    /** The current by which a triac stays above its holding current. */
    MARGIN(Tolerance.width(3e-3), "3 mA; small against a holding current of about 30 mA"),
    /** A level in decibels, or a distance of levels. */
    LEVEL(Tolerance.width(1), "decibels, 12 % of the voltage; the bridge current swings widely about its mean"),
    /** A value that no deck settles. */
    CALCULATED(Tolerance.share(0.25), "no deck contains it; formulas of this kind are seldom closer to a measurement");

    private final Tolerance tolerance;
    private final String reason;

    Grade(Tolerance tolerance, String reason) {
        this.tolerance = tolerance;
        this.reason = reason;
    }

    /** The default tolerance. */
    public Tolerance tolerance() {
        return tolerance;
    }

    /** Why the tolerance is what it is. */
    public String reason() {
        return reason;
    }
}
