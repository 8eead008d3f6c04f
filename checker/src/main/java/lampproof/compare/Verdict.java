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

    static Verdict predictedOnly(Prediction prediction, String reason) {
        return new Verdict(prediction, OptionalDouble.empty(), Outcome.PREDICTED_ONLY, reason);
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

    /** The difference over the greatest one that agrees [-]; 0 without a simulated value. */
    public double use() {
        double difference = Math.abs(simulated.orElse(prediction.value()) - prediction.value());
        return difference == 0 ? 0 : difference / allowed();
    }

    /** Whether deviations have the unit of the figure: a level has no share in per cent. */
    public boolean isLevel() {
        return prediction.figure().unit().startsWith("dB");
    }

    /**
     * Simulated less predicted value: of a level in decibels [dB], of any other figure over the predicted value [%]; empty where
     * the predicted one is lost in its tolerance.
     */
    public OptionalDouble deviation() {
        if (simulated.isEmpty()) {
            return OptionalDouble.empty();
        }
        double difference = simulated.getAsDouble() - prediction.value();
        double predicted = Math.abs(prediction.value());
        if (isLevel()) {
            return OptionalDouble.of(difference);
        }
        return predicted > allowed() ? OptionalDouble.of(100 * difference / predicted) : OptionalDouble.empty();
    }

    /** Unit of the deviation. */
    public String deviationUnit() {
        return isLevel() ? "dB" : "%";
    }
}
