package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The closed form of a cycle against small time steps through the same circuit. */
class SwitchingCellTest {

    private static final double INDUCTANCE = 4.7e-3;
    private static final double CAPACITANCE = 40e-12;
    private static final SwitchingCell CELL = cell(30, 20);
    private static final CellSupply STEP_UP_AT_THE_CREST = new CellSupply(325, 420);
    private static final CellSupply STEP_UP_IN_THE_VALLEY = new CellSupply(60, 420);

    @Test
    void aCycleAgreesWithSmallSteps() {
        agrees(CELL, STEP_UP_AT_THE_CREST, 0, 3e-6, 60e-9);
    }

    @Test
    void aCycleThatStartsBelowZeroAgreesWithSmallSteps() {
        agrees(CELL, STEP_UP_AT_THE_CREST, -0.01, 3e-6, 1.1e-6);
    }

    @Test
    void aRingCaughtByTheBodyDiodeAgreesWithSmallSteps() {
        agrees(CELL, new CellSupply(150, 420), 0, 6e-6, 2.5e-6);
    }

    @Test
    void aCurrentTooSmallForTheDiodeSwingsTheNodeUpAndDown() {
        CellCycle cycle = SingleCycle.of(CELL, STEP_UP_IN_THE_VALLEY, 0, 2e-6, (conduction, on) -> conduction + 60e-9);
        assertThat(cycle.diode().charge()).isZero();
        agrees(CELL, STEP_UP_IN_THE_VALLEY, 0, 2e-6, 60e-9);
    }

    @Test
    void continuousModeEndsWhereTheDiodeCurrentHasFallen() {
        SwitchingCell lossless = cell(0, 0);
        CellCycle cycle = SingleCycle.of(lossless, new CellSupply(290, 325), 0.2, 2e-6, (conduction, on) -> 5e-6);
        double peak = 0.2 + 290 * 2e-6 / INDUCTANCE;
        assertThat(cycle.peakCurrent()).isCloseTo(peak, Percentage.withPercentage(1e-9));
        assertThat(cycle.continuous()).isTrue();
        assertThat(cycle.diode().to()).isCloseTo(peak - 35 * 5e-6 / INDUCTANCE, Percentage.withPercentage(0.5));
    }

    @Test
    void chargeAndEnergyOfALosslessCycleBalance() {
        SwitchingCell lossless = cell(0, 0);
        CellCycle cycle = SingleCycle.of(lossless, STEP_UP_AT_THE_CREST, 0, 3e-6, (conduction, on) -> conduction);
        double taken = 325 * cycle.inductorCharge();
        double given = 420 * cycle.diode().charge();
        double lostAtTurnOn = 0.5 * CAPACITANCE * 420 * 420;
        assertThat(taken).isCloseTo(given + lostAtTurnOn, Percentage.withPercentage(0.3));
    }

    private static SwitchingCell cell(double onResistance, double offResistance) {
        return new SwitchingCell(
                INDUCTANCE,
                onResistance,
                offResistance,
                CAPACITANCE,
                Math.sqrt(INDUCTANCE / CAPACITANCE),
                1 / Math.sqrt(INDUCTANCE * CAPACITANCE),
                0);
    }

    private static void agrees(SwitchingCell cell, CellSupply supply, double start, double onTime, double idle) {
        CellCycle cycle = SingleCycle.of(cell, supply, start, onTime, (conduction, on) -> conduction + idle);
        SmallSteps steps = new SmallSteps(cell, supply);
        steps.conduct(start, onTime);
        double peak = steps.current;
        steps.release(cycle.rise().time() + cycle.diode().time() + idle);
        assertThat(cycle.peakCurrent()).isCloseTo(peak, Percentage.withPercentage(0.02));
        assertThat(cycle.topCurrent()).isCloseTo(steps.top, Percentage.withPercentage(0.3));
        assertThat(cycle.diode().charge())
                .isCloseTo(
                        steps.diodeCharge,
                        share(0.002, cycle.on().charge() + cycle.rise().charge()));
        assertThat(cycle.inductorCharge())
                .isCloseTo(
                        steps.charge,
                        share(0.002, cycle.on().charge() + cycle.rise().charge()));
        assertThat(cycle.inductorSquare())
                .isCloseTo(steps.square, share(0.01, cycle.on().square()));
        assertThat(cycle.nextStart()).isCloseTo(steps.current, within(0.03 * peak));
    }

    private static Offset<Double> share(double share, double of) {
        return within(share * Math.abs(of));
    }

    /** Semi-implicit Euler steps of a nanosecond's tenth: inductor, node capacitance, switch, diode and body diode. */
    private static final class SmallSteps {

        private static final double STEP = 0.1e-9;

        private final SwitchingCell cell;
        private final CellSupply supply;
        private double current;
        private double node;
        private double top;
        private double charge;
        private double square;
        private double diodeCharge;

        SmallSteps(SwitchingCell cell, CellSupply supply) {
            this.cell = cell;
            this.supply = supply;
        }

        void conduct(double start, double time) {
            current = start;
            for (long k = Math.round(time / STEP); k > 0; k--) {
                step(supply.source() - cell.onResistance() * current);
            }
        }

        void release(double time) {
            node = 0;
            for (long k = Math.round(time / STEP); k > 0; k--) {
                boolean diode = node >= supply.swing() && current > 0;
                step(supply.source() - node - (diode ? cell.offResistance() * current : 0));
                diodeCharge += diode ? current * STEP : 0;
                node = Math.max(0, Math.min(supply.swing(), node + current * STEP / cell.capacitance()));
            }
        }

        private void step(double inductorVoltage) {
            current += inductorVoltage * STEP / cell.inductance();
            top = Math.max(top, current);
            charge += current * STEP;
            square += current * current * STEP;
        }
    }
}
