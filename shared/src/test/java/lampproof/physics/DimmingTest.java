package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Phase-cut line, inrush, bleeder, latching, snubber and ringing. */
class DimmingTest {

    /** P. S. Bimbhra, Power Electronics, ex. 9.2: each thyristor 4.42 A mean and 7.75 A rms. */
    @Test
    void thyristor_currents_are_as_printed() {
        double peak = Math.sqrt(2) * 230;
        assertThat(PhaseCut.thyristorMean(peak, 20, Math.toRadians(45))).isCloseTo(4.42, within(0.005));
        assertThat(PhaseCut.thyristorRms(peak, 20, Math.toRadians(45))).isCloseTo(7.75, within(0.005));
    }

    /** Recomputed by integration of the chopped sine: degrees, ratio, V of 230, % of power. */
    @ParameterizedTest
    @CsvSource({
        "0, 1, 230.0, 100",
        "30, 0.9855, 226.7, 97.12",
        "45, 0.9535, 219.3, 90.92",
        "60, 0.8969, 206.3, 80.45",
        "75, 0.8142, 187.3, 66.29",
        "90, 0.7071, 162.6, 50.00",
        "105, 0.5806, 133.5, 33.71",
        "120, 0.4422, 101.7, 19.55",
        "135, 0.3014, 69.3, 9.08",
        "150, 0.1698, 39.1, 2.88"
    })
    void rms_over_the_removed_angle(double degrees, double ratio, double voltage, double percent) {
        double computed = PhaseCut.rmsRatio(Math.toRadians(degrees));
        assertThat(computed).isCloseTo(ratio, within(6e-5));
        assertThat(230 * computed).isCloseTo(voltage, within(0.06));
        assertThat(100 * computed * computed).isCloseTo(percent, within(0.006));
    }

    /** Energy balance, own example: 325 V into 47 Ohm and 150 nF, 100 times a second. */
    @Test
    void a_step_onto_a_capacitor_heats_the_damper_whatever_its_value() {
        DimmerInrush inrush = new DimmerInrush(325, 47, 150e-9);
        assertThat(inrush.peakCurrent()).isCloseTo(6.915, within(5e-4));
        assertThat(inrush.timeConstant()).isCloseTo(7.05e-6, withinPercentage(1e-6));
        assertThat(inrush.energy()).isCloseTo(7.92e-3, within(5e-6));
        assertThat(inrush.power(100)).isCloseTo(0.792, within(5e-4));
        assertThat(new DimmerInrush(325, 470, 150e-9).power(100)).isEqualTo(inrush.power(100));
    }

    /** J. M. Jacob, Power Electronics: Principles and Applications, ex. 8.4 and 8.5: prints 0.067 uF and 7.39 Ohm. */
    @Test
    void snubber_capacitor_and_inrush_resistor_are_as_printed() {
        assertThat(ThyristorSnubber.capacitanceBehindResistance(400, 80, 75e6)).isCloseTo(0.067e-6, within(5e-10));
        assertThat(DimmerInrush.leastResistance(Math.sqrt(2) * 220, 46, 80)).isCloseTo(7.39, within(0.005));
    }

    /** Mean of the rectified line, own example: 30 mA on 325 V, firing at 90 and at 0 degrees. */
    @Test
    void a_bleeder_is_hottest_at_full_conduction() {
        assertThat(BleederHeat.power(30e-3, 325, Math.PI / 2)).isCloseTo(3.104, within(5e-4));
        assertThat(BleederHeat.power(30e-3, 325, 0)).isCloseTo(6.207, within(5e-4));
    }

    /**
     * B. R. Gupta, V. Singhal, Power Electronics, ex. 2.6: 100 V, 10 Ohm, 5 H, 50 mA prints 2.5 ms; recomputed 2.506.
     */
    @Test
    void latching_time_is_as_printed() {
        assertThat(LatchingTime.of(100, 10, 5, 50e-3)).isCloseTo(2.506e-3, within(5e-7));
    }

    /** Recomputed: damping ratio and overshoot of the series circuit. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.729", "0.2, 0.527", "0.3, 0.372", "0.5, 0.163", "0.7, 0.046"})
    void overshoot_over_the_damping_ratio(double damping, double overshoot) {
        DampedStep circuit = DampedStep.ofDamping(damping, 6e4, 2.2e-3);
        assertThat(circuit.dampingRatio()).isCloseTo(damping, within(1e-12));
        assertThat(circuit.overshoot()).isCloseTo(overshoot, within(6e-4));
    }

    /** Recomputed: 325 V, 2.2 mH, 100 nF without damping rings at 10.73 kHz with 2.191 A. */
    @Test
    void undamped_surge_current() {
        DampedStep circuit = new DampedStep(0, 2.2e-3, 100e-9);
        assertThat(circuit.undampedPeak(325)).isCloseTo(2.191, within(5e-4));
        assertThat(circuit.ringingFrequency()).isCloseTo(10.73e3, within(5.0));
    }

    @Test
    void an_overdamped_circuit_does_not_ring() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DampedStep(1000, 1e-3, 5e-6))
                .withMessageStartingWith("damping ratio [-] must be below critical damping, found 35.3");
    }
}
