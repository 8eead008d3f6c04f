package lampproof.quasistatic.dimmed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import lampproof.design.Driver;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import org.junit.jupiter.api.Test;

/** With a constant bus voltage every cycle is a triangle, worked out here by hand. */
class StartUpCellTest {

    private static final double BUS = 100;
    private static final double RESET = 300;
    private static final double STEP = 10e-9;

    private final Driver boundary = Sizing.of(Lamps.stepUp(Law.BOUNDARY)).driver();
    private final Driver fixedOff = Sizing.of(Lamps.stepUp(Law.FIXED_OFF_TIME)).driver();

    @Test
    void aBoundaryCellClosesAgainOnceItsCurrentIsZero() {
        double onTime = 3e-6;
        double peak = BUS * onTime / boundary.inductor().inductance();
        double fall = onTime * BUS / RESET;
        double period = onTime
                + Math.max(
                        boundary.control().minOffTime(),
                        fall + boundary.control().delay());
        StartUpCell cell = new StartUpCell(boundary);
        assertThat(greatest(cell, boundary, onTime, 0.9 * period)).isCloseTo(peak, withinPercentage(1));
        assertThat(cell.isSwitchClosed()).isFalse();
        step(cell, boundary, onTime, 0.2 * period);
        assertThat(cell.isSwitchClosed()).isTrue();
    }

    @Test
    void aFixedOffTimeRunsFromTheReferenceOn() {
        double reference = 0.05;
        double slope = BUS / fixedOff.inductor().inductance();
        double onTime = reference / slope + fixedOff.control().delay();
        StartUpCell cell = new StartUpCell(fixedOff);
        double period = onTime + fixedOff.control().offTime();
        assertThat(greatest(cell, fixedOff, reference, 0.98 * period)).isCloseTo(onTime * slope, withinPercentage(1));
        assertThat(cell.isSwitchClosed()).isFalse();
        step(cell, fixedOff, reference, 0.04 * period);
        assertThat(cell.isSwitchClosed()).isTrue();
    }

    @Test
    void itsPhaseIsKnownForSomeCyclesAfterItStarted() {
        StartUpCell cell = new StartUpCell(boundary);
        cell.losePhase();
        step(cell, boundary, 3e-6, 1e-6);
        assertThat(cell.isPhaseKnown()).isFalse();
        cell.stop();
        assertThat(cell.isPhaseKnown()).isFalse();
        step(cell, boundary, 3e-6, 1e-6);
        assertThat(cell.isPhaseKnown()).isTrue();
        step(cell, boundary, 3e-6, 1e-3);
        assertThat(cell.isPhaseKnown()).isFalse();
    }

    private static double greatest(StartUpCell cell, Driver driver, double setPoint, double time) {
        double greatest = 0;
        for (double t = 0; t < time; t += STEP) {
            step(cell, driver, setPoint, STEP);
            greatest = Math.max(greatest, cell.current());
        }
        return greatest;
    }

    private static void step(StartUpCell cell, Driver driver, double setPoint, double time) {
        for (double t = 0; t < time; t += STEP) {
            cell.step(BUS, driver.line().crest(), -RESET, setPoint, 0, STEP);
        }
    }
}
