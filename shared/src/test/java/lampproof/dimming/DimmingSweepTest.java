package lampproof.dimming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import lampproof.design.Topology;
import lampproof.fault.UserFault;
import lampproof.quasistatic.Operation;
import lampproof.quasistatic.SteadyState;
import org.junit.jupiter.api.Test;

class DimmingSweepTest {

    /**
     * A resistor of 470 Ohm before the lamp draws 113 W beside its 7 W, so that the lamp sees what a resistor does: the
     * square of the rms voltage is the integral of (V sin x)^2 from 0 to the conduction angle, over pi.
     */
    @Test
    void a_resistive_lamp_sees_the_rms_of_a_cut_sine() {
        DimmingCurve curve = curve(
                "dimmer.edge,,trailing,,,",
                "dimmer.capacitance,,10,,nF,",
                "bleeder.resistance,,470,,Ohm,",
                "bleeder.threshold,,500,,V,",
                "bleeder.hold_current,,0,,mA,");
        for (DimmingPoint point : curve.down()) {
            if (point.degrees() > 25) {
                double square = 2 * 230 * 230 * integral(point.conduction()) / Math.PI;
                assertThat(point.stress().lampVoltage()).isCloseTo(Math.sqrt(square), withinPercentage(1));
            }
        }
        assertThat(curve.hottestBleeder().degrees()).isEqualTo(180);
    }

    /** Of sin^2 from 0 to an angle, by the midpoint rule. */
    private static double integral(double to) {
        int steps = 10_000;
        double sum = 0;
        for (int k = 0; k < steps; k++) {
            sum += Math.pow(Math.sin((k + 0.5) * to / steps), 2) * to / steps;
        }
        return sum;
    }

    /**
     * With the dimmer off its 100 nF and the filter capacitor of 22 nF feed a rectifier. Without bleeder the bus is at
     * the string, some 28 V, and the mean current is that of the charge moved four times in a period:
     * 4 x 50 Hz x (100 nF x 325 V - 122 nF x 28 V) = 5.8 mA, of which controller and gate take 0.6 mA; the string has the rest.
     */
    @Test
    void without_a_bleeder_the_capacitor_of_a_dimmer_that_is_off_lights_the_string() {
        DimmingCurve curve = curve("dimmer.edge,,leading,,,");
        assertThat(curve.offWithoutBleeder().current()).isCloseTo(5.8e-3 - 0.6e-3, withinPercentage(10));
        assertThat(curve.off().current())
                .isLessThan(1e-3 * curve.offWithoutBleeder().current());
    }

    /** Divider of 31.83 kOhm, the noise capacitor at 50 Hz, and the chosen 2.7 kOhm: 230 V x 2.7 / hypot(2.7, 31.83). */
    @Test
    void a_bleeder_leaves_the_voltage_of_a_divider() {
        DimmingCurve curve = curve("dimmer.edge,,trailing,,,");
        assertThat(curve.off().voltage()).isCloseTo(230 * 2.7 / Math.hypot(2.7, 31.83), withinPercentage(5));
        assertThat(curve.off().voltage()).isLessThan(curve.offWithoutBleeder().voltage());
        assertThat(curve.nearestToMisfire()).isEmpty();
        assertThat(curve.stepBack()).isEmpty();
    }

    /** A step-down converter without bleeder draws nothing while the line is below its string: asin(28 V / 325 V) = 5 degrees. */
    @Test
    void where_the_lamp_lights_and_darkens_is_found_within_a_quarter_of_a_degree() {
        DimmingCurve curve = curve("dimmer.edge,,trailing,,,");
        DimmingThreshold lights = curve.lights().orElseThrow();
        DimmingThreshold darkens = curve.darkens().orElseThrow();
        assertThat(lights.after().degrees() - lights.before().degrees()).isBetween(0.0, 0.25);
        assertThat(darkens.before().degrees() - darkens.after().degrees()).isBetween(0.0, 0.25);
        assertThat(curve.lit(lights.before().current())).isFalse();
        assertThat(curve.lit(lights.after().current())).isTrue();
        assertThat(curve.lit(darkens.before().current())).isTrue();
        assertThat(curve.lit(darkens.after().current())).isFalse();
        assertThat(lights.after().degrees()).isBetween(Math.toDegrees(Math.asin(28 / 325.0)), 10.0);
        assertThat(curve.lowestLevel())
                .hasValueSatisfying(level -> assertThat(level).isBetween(1e-3, 2e-3));
    }

    @Test
    void a_lamp_without_a_dimmer_has_no_curve() {
        Operation full = full();
        assertThatThrownBy(() -> DimmingSweep.of(full))
                .isInstanceOf(UserFault.class)
                .hasMessage("dimmer.edge: the spec names no dimmer; give dimmer.edge as leading or trailing");
    }

    private static DimmingCurve curve(String... rows) {
        return DimmingSweep.of(full(rows));
    }

    private static Operation full(String... rows) {
        return SteadyState.of(Sizing.of(Lamps.of(Topology.STEP_DOWN, Law.FIXED_OFF_TIME, rows))
                .driver());
    }
}
