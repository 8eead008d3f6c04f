package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import lampproof.design.Driver;
import lampproof.design.Lamps;
import lampproof.design.Sizing;
import lampproof.physics.DcmBoostDistortion;
import lampproof.physics.SoftRecovery;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The model with nearly ideal parts against closed forms of the ideal converter. */
class ModelValidationTest {

    private static final List<String> IDEAL = List.of(
            "line.voltage,,230,,V,",
            "line.frequency,,50,,Hz,",
            "line.resistance,,0,,Ohm,",
            "filter.fuse_resistance,,0,,Ohm,",
            "filter.inductance,,1,,uH,",
            "filter.resistance,,1,,mOhm,",
            "filter.damping,,1,,kOhm,",
            "filter.capacitance,,1,,pF,",
            "bridge.drop,,1,,mV,",
            "bridge.resistance,,0,,Ohm,",
            "bus.capacitance,,1,,nF,",
            "inductor.resistance,,0,,Ohm,",
            "switch.resistance,,1,,mOhm,",
            "switch.capacitance,,1,,fF,",
            "diode.drop,,1,,mV,",
            "diode.resistance,,0,,Ohm,",
            "sense.resistance,,1,,mOhm,",
            "switching.delay,,0,,s,",
            "string.resistance,,1,,Ohm,",
            "output.capacitance,,1,,mF,");

    private static Operation ideal(String... rows) {
        List<String> all = new ArrayList<>(IDEAL);
        all.addAll(List.of(rows));
        Driver driver = Sizing.of(Lamps.ofRows(all.toArray(String[]::new))).driver();
        return SteadyState.of(driver);
    }

    /** Of the harmonics alone: the bus of these drivers is too small to keep the switching ripple from the line. */
    private static double powerFactor(Operation operation) {
        LineStress line = operation.line();
        return line.displacementFactor() * line.spectrum().distortionFactor();
    }

    /** Line current of constant on-time is proportional to the voltage; ton = 4 L P / VM^2 (Erickson, sect. 21.3.3). */
    @Test
    void boundary_step_up_draws_a_sine() {
        Operation operation = ideal(
                "driver.topology,,step-up,,,",
                "driver.control,,boundary,,,",
                "switching.min_off_time,,0,,s,",
                "inductor.inductance,,3,,mH,",
                "string.voltage,,400,,V,",
                "string.current,,37.5,,mA,");
        assertThat(operation.line().spectrum().thd()).isLessThan(0.01);
        assertThat(powerFactor(operation)).isCloseTo(1, within(0.002));
        assertThat(operation.setPoint()).isCloseTo(1.701e-6, withinPercentage(0.5));
        assertThat(operation.stageAtCrest().pace().leastFrequency()).isCloseTo(109.8e3, withinPercentage(0.7));
    }

    /** Closed form i = sin / (1 - sin / M) of Erickson, eq. (21.31); table recomputed by FFT of 65 536 points. */
    @ParameterizedTest
    @CsvSource({"1.10, 0.5010", "1.25, 0.3158", "1.40, 0.2390", "1.50, 0.2070", "1.765, 0.1543"})
    void discontinuous_step_up_distorts_as_the_closed_form_says(double ratio, double thd) {
        double string = ratio * 230 * Math.sqrt(2);
        Operation operation = ideal(
                "driver.topology,,step-up,,,",
                "driver.control,,fixed-duty,,,",
                "inductor.inductance,,100,,uH,",
                "string.voltage,," + string + ",,V,",
                "string.current,," + 5 / string + ",,A,");
        assertThat(operation.stage().pace().discontinuousShare()).isEqualTo(1);
        assertThat(operation.line().spectrum().thd()).isCloseTo(thd, withinPercentage(1));
        assertThat(DcmBoostDistortion.thd(ratio)).isCloseTo(thd, withinPercentage(0.1));
    }

    /** Mean inductor current times duty at constant on-time; power factor recomputed by adaptive quadrature. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.9707, 0.247",
        "0.2, 0.9892, 0.148",
        "0.3, 0.9902, 0.141",
        "0.4, 0.9789, 0.209",
        "0.5, 0.9563, 0.306"
    })
    void boundary_step_down_has_the_power_factor_of_constant_on_time(double ratio, double powerFactor, double thd) {
        double string = ratio * 230 * Math.sqrt(2);
        Operation operation = ideal(
                "driver.topology,,step-down,,,",
                "driver.control,,boundary,,,",
                "switching.min_off_time,,0,,s,",
                "string.voltage,," + string + ",,V,",
                "string.current,," + 5 / string + ",,A,");
        assertThat(powerFactor(operation)).isCloseTo(powerFactor, withinPercentage(1));
        assertThat(operation.line().spectrum().thd()).isCloseTo(thd, within(0.015));
    }

    /** Step-up from 150 V, 1.5 mH, 60 kHz, duty 0.30, 60 mA: 337.5 V in discontinuous mode, not 150 V / 0.7. */
    @Test
    void the_mode_is_found_and_not_assumed() {
        SwitchingCell cell = new SwitchingCell(1.5e-3, 0, 0, 1e-18, 1e9, 1e12, 0);
        double period = 1 / 60e3;
        CellCycle cycle = SingleCycle.of(cell, new CellSupply(150, 337.5), 0, 0.3 * period, (fall, on) -> period - on);
        assertThat(cycle.peakCurrent()).isCloseTo(0.5, within(1e-9));
        assertThat(cycle.diode().time() / period).isCloseTo(0.24, within(1e-4));
        assertThat(cycle.continuous()).isFalse();
        assertThat(cycle.diode().charge() / period).isCloseTo(60e-3, within(1e-5));
    }

    /** Step-down, 0.350 A, duty 0.20, ripple 0.240 A: sqrt(D (I^2 + dI^2 / 12) - (D I)^2) = 0.1434 A in the bus capacitor. */
    @Test
    void the_bus_capacitor_carries_the_whole_switching_ripple() {
        IdleRing none = new IdleRing(0, 0, 0, 0, 0);
        CellCycle cycle = new CellCycle(
                new Ramp(0.23, 0.47, 2e-6, 0),
                NodeRise.NONE,
                0.47,
                new Ramp(0.47, 0.23, 8e-6, 0),
                none,
                SoftRecovery.NONE);
        AnglePoint point = new AnglePoint(1, 325, 0.07, 0.07, 325, 0, 0.07, 65, 0.35, 0.35, cycle);
        assertThat(Math.sqrt(point.inputRippleSquare(false))).isCloseTo(0.1434, within(5e-5));
    }

    /** R-C of the string against twice the line: percent flicker 74.85 % for 240 V, 300 Ohm, 4.7 uF, 50 Hz, 9 W. */
    @ParameterizedTest
    @ValueSource(doubles = {4.7, 16.9})
    void flicker_of_a_sine_current_is_that_of_resistance_and_capacitor(double microfarads) {
        List<String> rows = new ArrayList<>(IDEAL.subList(0, IDEAL.size() - 2));
        rows.addAll(List.of(
                "driver.topology,,step-up,,,",
                "driver.control,,boundary,,,",
                "switching.min_off_time,,0,,s,",
                "output.capacitance,," + microfarads + ",,uF,",
                "string.voltage,,600,,V,",
                "string.resistance,,300,,Ohm,",
                "string.current,,15,,mA,"));
        Operation operation = SteadyState.of(
                Sizing.of(Lamps.ofRows(rows.toArray(String[]::new))).driver());
        double expected = 1 / Math.hypot(1, 2 * Math.PI * 100 * 300 * microfarads * 1e-6);
        assertThat(operation.string().percentFlicker()).isCloseTo(expected, within(0.01));
    }
}
