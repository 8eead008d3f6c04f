package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Resistance of copper over temperature, frequency, layers and gauge. */
class CopperTest {

    private static final double ROOM = PhysicalConstants.ZERO_CELSIUS + 20;

    /** Erickson, Maksimović, 3rd ed., 2020, sect. 10.3.2: 1.724e-6 and 2.3e-6 Ohm cm; the coefficient gives 2.27e-6. */
    @Test
    void resistivity_is_as_printed() {
        assertThat(CopperResistivity.at(ROOM)).isCloseTo(1.724e-8, withinPercentage(1e-9));
        assertThat(CopperResistivity.at(PhysicalConstants.ZERO_CELSIUS + 100))
                .isCloseTo(2.3e-8, withinPercentage(1.6))
                .isCloseTo(2.27e-8, withinPercentage(0.3));
    }

    /**
     * Same source, eq. (10.62) and fig. 10.23: prints 0.075, 0.024, 0.0075 cm at 100 degC and 0.021, 0.0066 cm at 25
     * degC.
     */
    @ParameterizedTest
    @CsvSource({
        "2.3e-8, 10e3, 0.763e-3",
        "2.3e-8, 100e3, 0.241e-3",
        "2.3e-8, 1e6, 0.0763e-3",
        "1.724e-8, 100e3, 0.209e-3",
        "1.724e-8, 1e6, 0.0661e-3"
    })
    void skin_depth_is_as_printed(double resistivity, double frequency, double depth) {
        assertThat(SkinDepth.of(resistivity, frequency)).isCloseTo(depth, withinPercentage(0.2));
    }

    /**
     * Same section: diameter over skin depth is 1 for gauge 40 near 500 kHz and gauge 22 near 10 kHz, read off a
     * plot.
     */
    @Test
    void skin_depth_meets_the_printed_gauges() {
        assertThat(new WireGauge(40).diameter() / SkinDepth.of(1.724e-8, 500e3)).isCloseTo(1, within(0.2));
        assertThat(new WireGauge(22).diameter() / SkinDepth.of(1.724e-8, 10e3)).isCloseTo(1, within(0.2));
    }

    /** Recomputed from the same source, eq. (10.84)-(10.88), with the functions of Dowell. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 1.0055, 1.0263, 1.0610, 1.1718, 1.6913",
        "1.0, 1.0856, 1.4060, 1.9400, 3.6486, 11.658",
        "2.0, 1.8978, 5.1465, 10.561, 27.887, 109.10",
        "5.0, 4.9994, 15.089, 31.905, 85.717, 337.96"
    })
    void winding_resistance_over_layers(double phi, double one, double two, double three, double five, double ten) {
        assertThat(DowellResistance.ratio(phi, 1)).isCloseTo(one, withinPercentage(0.01));
        assertThat(DowellResistance.ratio(phi, 2)).isCloseTo(two, withinPercentage(0.01));
        assertThat(DowellResistance.ratio(phi, 3)).isCloseTo(three, withinPercentage(0.01));
        assertThat(DowellResistance.ratio(phi, 5)).isCloseTo(five, withinPercentage(0.01));
        assertThat(DowellResistance.ratio(phi, 10)).isCloseTo(ten, withinPercentage(0.01));
    }

    /**
     * Same source, sect. 10.4: a single layer has least loss at phi = pi/2, 0.917 of the direct-current loss at phi
     * 1.
     */
    @Test
    void a_single_layer_has_its_best_thickness() {
        double best = DowellResistance.ratio(Math.PI / 2, 1) / (Math.PI / 2);
        assertThat(best).isCloseTo(0.917, within(5e-4));
        assertThat(DowellResistance.ratio(1.4, 1) / 1.4).isGreaterThan(best);
        assertThat(DowellResistance.ratio(1.8, 1) / 1.8).isGreaterThan(best);
    }

    /** Limits of the formula: thin layers are direct current, thick ones phi (2 M^2 + 1) / 3. */
    @Test
    void thin_and_thick_layers_reach_their_limits() {
        assertThat(DowellResistance.ratio(1e-3, 4)).isCloseTo(1, within(1e-6));
        assertThat(DowellResistance.ratio(500, 3)).isCloseTo(500 * 19 / 3.0, withinPercentage(1e-9));
        assertThat(DowellResistance.thickness(1e-3, 1, 1e-3)).isCloseTo(Math.sqrt(Math.PI) / 2, within(1e-12));
    }

    /** Recomputed from the gauge formula: diameter [mm], area [mm2], resistance at 20 degC [Ohm/m]. */
    @ParameterizedTest
    @CsvSource({
        "28, 0.3211, 0.0810, 0.2129",
        "30, 0.2546, 0.0509, 0.3385",
        "32, 0.2019, 0.0320, 0.5383",
        "36, 0.1270, 0.01267, 1.361",
        "40, 0.0799, 0.00501, 3.441"
    })
    void gauges_follow_the_formula(int number, double millimetres, double squareMillimetres, double resistance) {
        WireGauge wire = new WireGauge(number);
        assertThat(wire.diameter()).isCloseTo(millimetres * 1e-3, withinPercentage(0.1));
        assertThat(wire.area()).isCloseTo(squareMillimetres * 1e-6, withinPercentage(0.15));
        assertThat(wire.resistancePerLength(ROOM)).isCloseTo(resistance, withinPercentage(0.1));
    }

    /**
     * Erickson, Maksimović, 3rd ed., 2020, app. B.6: area [1e-3 cm2] and resistance [1e-6 Ohm/cm], formula within 3
     * %.
     */
    @ParameterizedTest
    @CsvSource({"28, 0.8046, 2142.7", "30, 0.5067, 3402.2", "36, 0.1266, 13608", "40, 0.04869, 35400"})
    void gauges_agree_with_the_printed_table(int number, double area, double resistance) {
        WireGauge wire = new WireGauge(number);
        assertThat(wire.area()).isCloseTo(area * 1e-7, withinPercentage(3));
        assertThat(wire.resistancePerLength(ROOM)).isCloseTo(resistance * 1e-4, withinPercentage(3));
    }

    @Test
    void the_thickest_wire_that_fits_is_chosen() {
        assertThat(WireGauge.thickestWithin(1.09e-7).number()).isEqualTo(27);
        assertThat(WireGauge.thickestWithin(new WireGauge(31).area()).number()).isEqualTo(31);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WireGauge.thickestWithin(1e-12))
                .withMessageStartingWith("gauge number [-] must be 0.0 to 50.0, found");
    }
}
