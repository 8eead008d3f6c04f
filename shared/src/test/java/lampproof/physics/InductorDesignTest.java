package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Flux, turns, gap, core size and wire of an inductor. */
class InductorDesignTest {

    private static final double SQUARE_CENTIMETRE = 1e-4;

    /**
     * Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4: PQ32/30 of 161 mm2 prints 29 turns and, with 30, 0.35 T at
     * overload.
     */
    @Test
    void turns_and_overload_flux_of_the_200_W_stage_are_as_printed() {
        assertThat(FluxDensity.turns(202e-6, 7, 0.3, 161e-6)).isCloseTo(29.3, within(0.05));
        assertThat(FluxDensity.peak(202e-6, 1.2 * 7, 30, 161e-6)).isCloseTo(0.351, within(5e-4));
    }

    /** Erickson, Maksimović, 3rd ed., 2020, sect. 11.4.2: alternating flux 0.0415 T, window shares and wire areas. */
    @Test
    void alternating_flux_and_wire_areas_of_the_flyback_are_as_printed() {
        double window = CoreTable.named("EE30").orElseThrow().windowArea();
        double area = CoreTable.named("EE30").orElseThrow().area();
        assertThat(FluxDensity.alternating(200, 0.4 / 150e3, 59, area)).isCloseTo(0.0415, withinPercentage(0.2));
        double share = 0.7958 / 1.7705;
        assertThat(WindowAllocation.wireArea(share, 0.3, window, 59))
                .isCloseTo(1.09e-3 * SQUARE_CENTIMETRE, withinPercentage(0.5));
        assertThat(WindowAllocation.wireArea(0.55, 0.3, window, 8.81))
                .isCloseTo(8.89e-3 * SQUARE_CENTIMETRE, withinPercentage(0.5));
    }

    /**
     * Erickson, Maksimović, 3rd ed., 2020, sect. 11.4.1: coupled inductor 28 V, 4 A and 12 V, 2 A at 200 kHz, duty
     * 0.35, 20 % of ripple prints 4.86 A, 47 uH, 5.83 A, 16e-3 cm5, PQ20/16, 0.52 mm, 17.6 turns.
     */
    @Test
    void coupled_inductor_is_as_printed() {
        double magnetizing = 4 + 12.0 / 28 * 2;
        double peak = 1.2 * magnetizing;
        double inductance = InductorRipple.buckInductance(28 / 0.35, 28, 2 * 0.2 * magnetizing, 200e3);
        double required = new CoreGeometricalConstant(inductance, magnetizing, peak, 0.25, 0.75, 0.4)
                .required(CopperResistivity.AT_ROOM_TEMPERATURE);
        MagneticCore core = CoreTable.named("pq20/16").orElseThrow();
        assertThat(inductance).isCloseTo(47e-6, withinPercentage(0.5));
        assertThat(required).isCloseTo(16e-13, withinPercentage(2)).isLessThan(core.geometricalConstant());
        assertThat(AirGap.length(inductance, peak, 0.25, core.area())).isCloseTo(0.52e-3, withinPercentage(1));
        assertThat(FluxDensity.turns(inductance, peak, 0.25, core.area())).isCloseTo(17.6, withinPercentage(0.5));
    }

    /** Recomputed: 1.07 mH, 1.5 A, 1.77 A, 0.25 T, 4 A/mm2, fill 0.3 needs 0.947 cm4. */
    @Test
    void area_product_of_the_flyback() {
        assertThat(AreaProduct.required(1.07e-3, 1.5, 1.77, 0.25, 4e6, 0.3))
                .isCloseTo(0.947e-8, withinPercentage(0.05));
    }

    @Test
    void no_turns_for_no_flux() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FluxDensity.turns(1e-3, 1, 0, 1e-5))
                .withMessage("flux density [T] must be above 0 and finite, found 0.0");
    }
}
