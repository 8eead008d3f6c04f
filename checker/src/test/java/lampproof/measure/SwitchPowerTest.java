package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A switch of 100 pF: it opens, 10 mA charge it to 100 V in 1 us, it rests there, and it closes on 100 V. That costs half of
 * 100 pF times 100 V squared, 0.5 uJ, in a cycle. While closed it carries 0.1 A at 2 V for 4 us: 0.8 uJ.
 */
class SwitchPowerTest {

    private static final double CYCLE = 8e-6;
    private static final double COST = 0.5e-6 + 0.8e-6;

    @Test
    void whatTheCapacitanceHoldsAtClosingIsLost() {
        assertThat(power(0).value()).isCloseTo(COST / CYCLE, within(1e-9 * COST / CYCLE));
    }

    @Test
    void aCurrentThatOvershootsWhereTheVoltageStandsStillCostsNothing() {
        assertThat(power(-5e-3).value()).isCloseTo(COST / CYCLE, within(1e-9 * COST / CYCLE));
    }

    @Test
    void aSwitchThatIsAlwaysClosedLosesTheProduct() {
        MeasurementPass pass = new MeasurementPass();
        SwitchPower power = switchPower(pass, 2);
        Wave.run(pass, new double[][] {{0, 3, 2, 1}, {1, 3, 2, 1}, {2, 3, 2, 1}});
        assertThat(power.result().value()).isCloseTo(6, within(1e-12));
    }

    /** Where a period begins and ends is found from the gate and rounded. */
    @ParameterizedTest
    @ValueSource(doubles = {-1e-12, 0, 1e-12})
    void aPeriodHoldsOneClosingHoweverItsEndsAreRounded(double rounding) {
        MeasurementPass pass = new MeasurementPass();
        SwitchPower power = switchPower(pass, CYCLE);
        Wave.run(pass, new double[][] {
            {0, 100, 0, 0.5 + rounding},
            {0, 2, 0.1, 1},
            {4e-6, 2, 0.1, 1},
            {4e-6, 0, 0.01, 0},
            {5e-6, 100, 0.01, 0},
            {5e-6, 100, 0, 0},
            {CYCLE, 100, 0, 0},
            {CYCLE, 100, 0, 0.5 + rounding},
        });
        assertThat(power.result().value()).isCloseTo(COST / CYCLE, within(1e-9 * COST / CYCLE));
    }

    /** One cycle, with a current that is wrong [A] for a moment just after the voltage has stopped. */
    private static Measured power(double overshoot) {
        MeasurementPass pass = new MeasurementPass();
        SwitchPower power = switchPower(pass, CYCLE);
        Wave.run(pass, new double[][] {
            {0, 2, 0.1, 1},
            {4e-6, 2, 0.1, 1},
            {4e-6, 0, 0.01, 0},
            {5e-6, 100, 0.01, 0},
            {5e-6, 100, overshoot, 0},
            {5.2e-6, 100, 0, 0},
            {CYCLE, 100, 0, 0},
            {CYCLE, 0, 0, 1},
        });
        return power.result();
    }

    private static SwitchPower switchPower(MeasurementPass pass, double end) {
        Channel voltage = pass.channel("voltage");
        Channel current = pass.channel("current");
        Gate gate = new Gate(pass.channel("gate"), 0.5, 0.1);
        return pass.add(new SwitchPower(Window.of(0, end), voltage, current, gate));
    }
}
