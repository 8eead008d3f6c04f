package lampproof.compare;

import lampproof.prediction.Grade;
import lampproof.prediction.Prediction;
import lampproof.prediction.Tolerance;

/**
 * The tolerances for the table of an instrument: never tighter than those for a simulation.
 *
 * <p>A differential voltage probe and a current clamp each have a gain error of 1 to 2 %, and the converters have 8 bits; a power has both errors, a peak also the noise. Common practice, no source.
 */
final class InstrumentTolerance {

    /** The tolerances in words, for reports. */
    static final String TEXT =
            "instrument tolerances: 3 % for means and rms values, 5 % for peaks and times, 10 % for losses, "
                    + "0.02 for power factors, 3 points for distortion, flicker and efficiency, "
                    + "because probe and clamp have a gain error of 1 to 2 % each and a resolution of 8 bits";

    private InstrumentTolerance() {}

    /** The prediction with the wider of its own tolerance and that of instruments. */
    static Prediction of(Prediction prediction) {
        Tolerance own = prediction.tolerance();
        Tolerance wide = of(prediction.figure().grade());
        return prediction.within(
                new Tolerance(Math.max(own.relative(), wide.relative()), Math.max(own.absolute(), wide.absolute())));
    }

    private static Tolerance of(Grade grade) {
        return switch (grade) {
            case MEAN -> Tolerance.share(0.03);
            case PEAK, TIMING -> Tolerance.share(0.05);
            case LOSS -> Tolerance.share(0.10);
            case POWER_FACTOR -> Tolerance.width(0.02);
            case PERCENT, EFFICIENCY -> Tolerance.width(3);
            case ANGLE -> Tolerance.width(5);
            case LEVEL -> Tolerance.width(3);
            case MARGIN, CALCULATED -> grade.tolerance();
        };
    }
}
