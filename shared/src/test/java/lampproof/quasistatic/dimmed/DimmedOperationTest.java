package lampproof.quasistatic.dimmed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import lampproof.design.Driver;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.design.Topology;
import lampproof.quasistatic.Operation;
import lampproof.quasistatic.SteadyState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DimmedOperationTest {

    /** The other model has neither chokes nor a dimmer; what both have in common must come out alike. */
    @ParameterizedTest
    @EnumSource(Topology.class)
    void a_dimmer_that_cuts_nothing_leaves_the_lamp_as_it_is(Topology topology) {
        Operation full = operation(topology, "trailing");
        DimmedStress open = DimmedOperation.of(full).at(full, Math.PI).stress();
        assertThat(open.stringCurrent()).isCloseTo(full.string().meanCurrent(), withinPercentage(1));
        double supply = full.driver().supplyCurrent() * full.line().bridgeMean();
        assertThat(open.linePower() - open.bleederLoss()).isCloseTo(full.line().power() + supply, withinPercentage(3));
        assertThat(open.busPeak()).isCloseTo(full.line().busPeak(), withinPercentage(1));
        assertThat(open.lampVoltage()).isCloseTo(230, within(0.5));
    }

    @ParameterizedTest
    @EnumSource(Topology.class)
    void a_trailing_edge_dims_without_a_step_back(Topology topology) {
        Operation full = operation(topology, "trailing");
        DimmedOperation dimmed = DimmedOperation.of(full);
        List<Double> currents = new ArrayList<>();
        for (int angle = 20; angle <= 180; angle += 20) {
            dimmed = dimmed.at(full, Math.toRadians(angle));
            currents.add(dimmed.stress().stringCurrent());
        }
        assertThat(currents).isSortedAccordingTo((a, b) -> a < 0.995 * b ? -1 : a > 1.005 * b ? 1 : 0);
        assertThat(currents.get(0)).isLessThan(0.1 * full.string().meanCurrent());
    }

    /** What the output capacitor still gives once it falls by less than 1e-4 of the string voltage in a half cycle [A]. */
    private static double afterglow(Driver driver) {
        double fall = 1e-4 * driver.string().voltage(driver.string().current());
        return driver.output().capacitance() * fall / driver.line().halfPeriod();
    }

    /** Divider of the noise capacitor, 31.83 kOhm at 50 Hz, and 2.7 kOhm: 230 V x 2.7 / hypot(2.7, 31.83) = 19.44 V. */
    @Test
    void a_dimmer_that_is_off_leaves_the_voltage_of_the_divider_and_no_light() {
        Operation full = operation(Topology.STEP_UP, "trailing");
        DimmedStress off = DimmedOperation.of(full).at(full, 0).stress();
        assertThat(off.lampVoltage()).isCloseTo(19.44, withinPercentage(10));
        assertThat(off.stringCurrent()).isLessThan(afterglow(full.driver()));
    }

    /** At most the noise capacitor's own discharge through the damping of the choke, and the filter's undamped step. */
    @ParameterizedTest
    @CsvSource({"STEP_DOWN,90", "STEP_UP,90", "STEP_UP,120"})
    void the_firing_spike_stays_below_what_the_impedances_allow(Topology topology, double angle) {
        Operation full = operation(topology, "leading");
        DimmedStress fired =
                DimmedOperation.of(full).at(full, Math.toRadians(angle)).stress();
        Driver driver = full.driver();
        double crest = driver.line().crest();
        double store = driver.busCapacitance() + driver.filter().capacitance();
        double filter = crest * Math.sqrt(store / driver.filter().inductance())
                + crest / driver.filter().damping();
        double dimmer = 2 * crest / driver.dimming().damping();
        assertThat(fired.peakLineCurrent()).isBetween(0.3 * filter, filter);
        assertThat(fired.peakTriacCurrent()).isBetween(fired.peakLineCurrent(), dimmer + filter);
        assertThat(fired.busPeak()).isBetween(crest, 2 * crest);
    }

    /** The ring of the filter turns the current round after the gate pulse; nothing but the current tells the triac. */
    @Test
    void a_triac_whose_current_turns_round_goes_out_and_one_without_holding_current_does_not() {
        Operation holding = operation(Topology.STEP_DOWN, "leading");
        Operation forgiving = operation(Topology.STEP_DOWN, "leading", "dimmer.holding_current,,0,,mA,");
        DimmedStress out = DimmedOperation.of(holding).at(holding, Math.PI / 2).stress();
        DimmedStress lit =
                DimmedOperation.of(forgiving).at(forgiving, Math.PI / 2).stress();
        assertThat(out.leastTriacCurrent()).isZero();
        assertThat(lit.stringCurrent()).isGreaterThan(4 * out.stringCurrent());
    }

    /** Each firing finds another bus than the one before: one half cycle has a third more light than the other. */
    @Test
    void half_cycles_that_take_turns_are_taken_together() {
        Operation full = operation(Topology.STEP_UP, "leading", "dimmer.angle,,115,,deg,");
        DimmedOperation both = DimmedOperation.of(full);
        DimmedHalfCycle halfCycle = new DimmedHalfCycle(full.driver(), both.bias(), DimmedOperation.senseTime(full));
        DimmedState middle = halfCycle.run(both.start(), full.setPoint());
        DimmedStress one = halfCycle.stress();
        DimmedState end = halfCycle.run(middle, full.setPoint());
        DimmedStress other = halfCycle.stress();
        assertThat(end.slow().busVoltage()).isCloseTo(both.start().slow().busVoltage(), withinPercentage(1));
        assertThat(Math.abs(one.stringCurrent() - other.stringCurrent()))
                .isGreaterThan(0.1 * full.string().meanCurrent());
        assertThat(both.swing()).isCloseTo(Math.abs(one.stringCurrent() - other.stringCurrent()), withinPercentage(1));
        assertThat(both.stress().stringCurrent())
                .isCloseTo((one.stringCurrent() + other.stringCurrent()) / 2, withinPercentage(0.1));
        assertThat(both.stress().lineCurrent())
                .isCloseTo(
                        Math.sqrt((square(one.lineCurrent()) + square(other.lineCurrent())) / 2),
                        withinPercentage(0.1));
        assertThat(both.stress().busPeak()).isCloseTo(Math.max(one.busPeak(), other.busPeak()), withinPercentage(0.1));
    }

    private static double square(double value) {
        return value * value;
    }

    private static Operation operation(Topology topology, String edge, String... more) {
        List<String> rows = new ArrayList<>(List.of("dimmer.edge,," + edge + ",,,"));
        rows.addAll(List.of(more));
        Law law = topology == Topology.STEP_UP ? Law.BOUNDARY : Law.FIXED_OFF_TIME;
        return SteadyState.of(
                Sizing.of(Lamps.of(topology, law, rows.toArray(String[]::new))).driver());
    }
}
