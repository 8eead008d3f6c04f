package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lampproof.design.LedString;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Exact steps of output capacitor and string against small ones. */
class OutputResponseTest {

    private static final LedString STRING = new LedString(378, 2500, 0.0167);
    private static final double CAPACITANCE = 2.2e-6;
    private static final double STEP = 80e-6;
    private static final OutputResponse STATE = new OutputResponse(STRING, CAPACITANCE, STEP);

    @Test
    void aStepAboveTheKneeAgreesWithSmallSteps() {
        assertThat(STATE.next(410, 0.03)).isCloseTo(smallSteps(410, 0.03), Percentage.withPercentage(1e-4));
    }

    @Test
    void aStepThroughTheKneeAgreesWithSmallSteps() {
        assertThat(STATE.next(377.5, 0.03)).isCloseTo(smallSteps(377.5, 0.03), Percentage.withPercentage(1e-4));
    }

    @Test
    void belowTheKneeAnEmptyCapacitorStaysWhereItIs() {
        assertThat(STATE.next(300, 0)).isEqualTo(300);
    }

    @Test
    void theStringTakesWhatTheCapacitorDoesNot() {
        double end = STATE.next(410, 0.03);
        double string = STATE.stringCurrent(410, end, 0.03);
        assertThat(string * STEP + CAPACITANCE * (end - 410)).isCloseTo(0.03 * STEP, within(1e-15));
    }

    private static double smallSteps(double voltage, double current) {
        double v = voltage;
        int steps = 100_000;
        for (int k = 0; k < steps; k++) {
            v += (current - STRING.current(v)) * STEP / steps / CAPACITANCE;
        }
        return v;
    }
}
