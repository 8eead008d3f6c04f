package lampproof.compare;

import java.util.OptionalDouble;
import lampproof.measure.Measured;
import lampproof.prediction.Prediction;

/**
 * The comparison of one predicted figure.
 *
 * @param prediction the prediction
 * @param simulated the simulated value [unit of the figure]; empty when there is none
 * @param outcome the result of the comparison
 * @param reason why there is no verdict, or a remark on it; empty if there is none
 */
public record Verdict(Prediction prediction, OptionalDouble simulated, Outcome outcome, String reason) {

    /** Compares a measured figure with the prediction; an absent one gives no verdict. */
    static Verdict of(Prediction prediction, Measured measured) {
        if (!measured.present()) {
            return noVerdict(prediction, measured.note());
        }
        boolean agrees = prediction.tolerance().agrees(prediction.value(), measured.value());
        return new Verdict(prediction, measured.number(), agrees ? Outcome.AGREES : Outcome.DIFFERS, measured.note());
    }

    static Verdict noVerdict(Prediction prediction, String reason) {
        return new Verdict(prediction, OptionalDouble.empty(), Outcome.NO_VERDICT, reason);
    }

    static Verdict notSimulated(Prediction prediction, String reason) {
        return new Verdict(prediction, OptionalDouble.empty(), Outcome.NOT_SIMULATED, reason);
    }

    /** The same with its explanation. */
    Verdict explainedBy(String explanation) {
        String all = reason.isEmpty() ? explanation : reason + "; " + explanation;
        return new Verdict(prediction, simulated, outcome, all);
    }

    /** Greatest difference that agrees [unit of the figure]. */
    public double allowed() {
        return prediction.tolerance().around(prediction.value());
    }

    /** Simulated less predicted value over the predicted one [%]; empty where the predicted value is below its tolerance. */
    public OptionalDouble deviation() {
        double predicted = Math.abs(prediction.value());
        return simulated.isPresent() && predicted > allowed()
                ? OptionalDouble.of(100 * (simulated.getAsDouble() - prediction.value()) / predicted)
                : OptionalDouble.empty();
    }
}
