package lampproof.compare;

import lampproof.quasistatic.Condition;
import lampproof.unit.Engineering;

/**
 * A condition that is put into a prediction as it was measured.
 *
 * @param condition the condition
 * @param predicted what the prediction rests on [unit of the condition]
 * @param simulated what the waveform shows [unit of the condition]
 */
record Substitution(Condition condition, double predicted, double simulated) {

    private static final int DIGITS = 4;

    /** What differs, in words. */
    String text() {
        return condition.part()
                ? "the " + condition.words() + ": the one in the circuit measures " + value(simulated)
                        + ", the prediction used " + value(predicted)
                : "the " + condition.words() + ": predicted " + value(predicted) + ", simulated " + value(simulated);
    }

    private String value(double value) {
        return Engineering.digits(DIGITS).text(value, condition.unit());
    }
}
