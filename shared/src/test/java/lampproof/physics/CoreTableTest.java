package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoreTableTest {

    /** Erickson, Maksimović, 3rd ed., 2020, app. B prints Kg [cm5] beside the dimensions. */
    @ParameterizedTest
    @CsvSource({
        "EE12, 0.731e-3",
        "EE16, 2.02e-3",
        "EE19, 4.07e-3",
        "EE22, 8.26e-3",
        "EE30, 85.7e-3",
        "EE40, 0.209",
        "PQ20/16, 22.4e-3",
        "PQ20/20, 33.6e-3",
        "PQ26/20, 83.9e-3",
        "PQ26/25, 0.125",
        "PQ32/30, 0.384",
        "ETD29, 0.0978"
    })
    void geometrical_constant_agrees_with_the_printed_column(String name, double printed) {
        MagneticCore core = CoreTable.named(name).orElseThrow();
        assertThat(core.geometricalConstant()).isCloseTo(printed * 1e-10, withinPercentage(0.6));
        assertThat(core.source()).contains("Maksimović");
    }

    /** From memory, makers' data books to IEC 60205: effective volumes [mm3]; beside them the printed rows above. */
    @ParameterizedTest
    @CsvSource({
        "EF12.6, 369",
        "EF16, 750",
        "EF20, 1490",
        "EF25, 3000",
        "RM5, 526",
        "RM6, 1090",
        "RM8, 2430",
        "EP7, 162",
        "EP10, 215",
        "EP13, 472"
    })
    void remembered_dimensions_agree_with_remembered_volumes(String name, double volume) {
        MagneticCore core = CoreTable.named(name).orElseThrow();
        assertThat(core.volume()).isCloseTo(volume * 1e-9, withinPercentage(3));
        assertThat(core.source()).endsWith("from memory");
    }

    /** Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4 uses 161 mm2 for PQ32/30. */
    @Test
    void area_agrees_with_a_second_source() {
        assertThat(CoreTable.named("PQ32/30").orElseThrow().area()).isCloseTo(161e-6, withinPercentage(0.1));
    }

    @Test
    void the_smallest_core_that_will_do_is_chosen() {
        MagneticCore chosen = CoreTable.smallestByAreaProduct(0.05e-8).orElseThrow();
        assertThat(chosen.areaProduct()).isGreaterThanOrEqualTo(0.05e-8);
        assertThat(CoreTable.all())
                .filteredOn(core -> core.areaProduct() >= 0.05e-8)
                .allMatch(core -> core.volume() >= chosen.volume());
        assertThat(CoreTable.smallestByGeometricalConstant(0.3e-10)
                        .orElseThrow()
                        .name())
                .isEqualTo("PQ32/30");
        assertThat(CoreTable.smallestByGeometricalConstant(1)).isEmpty();
    }
}
