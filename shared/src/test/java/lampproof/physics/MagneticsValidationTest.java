package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Inductor design, core loss and copper loss against printed and measured values. */
class MagneticsValidationTest {

    /**
     * Erickson, Maksimović, 3rd ed., 2020, sect. 11.4.2, eq. (11.58)-(11.88): flyback 200 V to 20 V, 5 A, 150 kHz
     * prints Kg 0.049 cm5, EE30, 58.7 turns, 0.44 mm, 0.796 and 6.50 A.
     */
    @Test
    void flyback_inductor_has_the_printed_core_turns_gap_and_currents() {
        double magnetizing = 0.15 * 5 / 0.6;
        double inductance = 200 * 0.4 / 150e3 / (2 * 0.2 * magnetizing);
        double peak = 1.2 * magnetizing;
        double primary = Math.sqrt(0.4) * RippleFactor.rms(magnetizing, 0.2 * magnetizing);
        double secondary = Math.sqrt(0.6) * RippleFactor.rms(magnetizing, 0.2 * magnetizing) / 0.15;
        double required = new CoreGeometricalConstant(inductance, primary + 0.15 * secondary, peak, 0.25, 1.5, 0.3)
                .required(CopperResistivity.AT_ROOM_TEMPERATURE);
        MagneticCore core = CoreTable.named("EE30").orElseThrow();
        assertThat(required).isCloseTo(0.0492e-10, withinPercentage(1)).isLessThan(core.geometricalConstant());
        assertThat(CoreTable.named("EE22").orElseThrow().geometricalConstant()).isLessThan(required);
        assertThat(FluxDensity.turns(inductance, peak, 0.25, core.area())).isCloseTo(58.7, withinPercentage(1));
        assertThat(AirGap.length(inductance, peak, 0.25, core.area())).isCloseTo(0.443e-3, withinPercentage(1));
        assertThat(primary).isCloseTo(0.796, withinPercentage(1));
        assertThat(secondary).isCloseTo(6.50, withinPercentage(1));
    }

    /**
     * Princeton MagNet measurements, N87 toroid, triangle of duty 0.5 at 100 kHz, against the coefficients of its
     * constants table, which come from other data.
     */
    @Test
    void core_loss_of_a_triangle_agrees_with_measurement() {
        assertThat(lossOfTriangle(59.4e-3)).isCloseTo(38.4e3, withinPercentage(45));
        assertThat(lossOfTriangle(88.1e-3)).isCloseTo(97.2e3, withinPercentage(45));
        assertThat(lossOfTriangle(128.1e-3)).isCloseTo(234.5e3, withinPercentage(45));
    }

    /**
     * Erickson, Maksimović, 3rd ed., 2020, eq. (10.61)-(10.62) and sect. 10.4: prints 0.024 cm at 100 kHz and 1 : 5 :
     * 13, sum 19, for three thick layers; the ratio at phi 1 of three layers is recomputed.
     */
    @Test
    void skin_depth_and_proximity_factors_are_as_printed() {
        assertThat(SkinDepth.of(2.3e-8, 100e3)).isCloseTo(0.241e-3, withinPercentage(1));
        assertThat(DowellResistance.thickFoilLayer(1)).isEqualTo(1);
        assertThat(DowellResistance.thickFoilLayer(2)).isEqualTo(5);
        assertThat(DowellResistance.thickFoilLayer(3)).isEqualTo(13);
        assertThat(DowellResistance.ratio(20, 3)).isCloseTo(20 * 19 / 3.0, within(0.01));
        assertThat(DowellResistance.ratio(1, 3)).isCloseTo(1.940, withinPercentage(1));
    }

    private static double lossOfTriangle(double amplitude) {
        return CoreMaterial.named("N87").orElseThrow().loss().triangleOfDuty(2 * amplitude, 100e3, 0.5);
    }
}
