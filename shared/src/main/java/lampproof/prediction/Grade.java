package lampproof.prediction;

/** How closely figures of a kind can be predicted, and why. */
@SuppressWarnings("ImmutableEnumChecker")
public enum Grade {
    /** A mean or rms value. */
    MEAN(
            Tolerance.share(0.02),
            "averages over cycles; the model leaves out filter resonance and switching ripple on the bus"),
    /** A greatest or least value. */
    PEAK(Tolerance.share(0.04), "one instant; the model leaves out filter ringing and jitter of the control cell"),
    /** A frequency or a time. */
    TIMING(Tolerance.share(0.04), "follows peak current and output voltage, each with an error of its own"),
    /** A power factor or displacement factor. */
    POWER_FACTOR(Tolerance.width(0.01), "a ratio near one; its distance from one is what is judged"),
    /** Distortion or flicker in per cent. */
    PERCENT(Tolerance.width(2), "per cent points; set by what happens near the zero crossing of the line"),
    /** A loss of one part. */
    LOSS(Tolerance.share(0.05), "a small difference of large powers, or a square of a current that has its own 2 %"),
    /** The loss of all parts, or the efficiency. */
    EFFICIENCY(Tolerance.width(1), "per cent points; the losses together have an error below a tenth of themselves"),
    /** An angle in degrees. */
    ANGLE(Tolerance.width(5), "the bridge turns on and off while the filter rings"),
    /** The current by which a triac stays above its holding current. */
    MARGIN(Tolerance.width(3e-3), "3 mA; what counts is the distance from a holding current of some 30 mA"),
    /** A level in decibels, or a distance of levels. */
    LEVEL(Tolerance.width(1), "decibels, an eighth of the voltage; the bridge is swung far about its mean"),
    /** A value that no deck settles. */
    CALCULATED(Tolerance.share(0.25), "no deck contains it; formulas of this kind seldom come closer to a measurement");

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
