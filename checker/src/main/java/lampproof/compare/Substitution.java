package lampproof.compare;

import lampproof.quasistatic.Condition;
import lampproof.unit.Engineering;

/**
 * A measured condition that replaces the predicted one.
 *
 * @param condition the condition
 * @param predicted the value that the prediction uses [unit of the condition]
 * @param simulated the measured value [unit of the condition]
 */
record Substitution(Condition condition, double predicted, double simulated) {

    private static final int DIGITS = 4;

    /** The difference in words. */
    String text() {
        return condition.part()
                ? "the " + condition.words() + ": in the circuit " + value(simulated) + ", the prediction used "
                        + value(predicted)
                : "the " + condition.words() + ": predicted " + value(predicted) + ", simulated " + value(simulated);
    }

    private String value(double value) {
        return Engineering.digits(DIGITS).text(value, condition.unit());
    }
}
