package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Commission Regulation (EU) 2019/2020, consolidated 1 March 2021, Annexes I and II. */
class EcodesignTest {

    private static final double HOUR = 3600;

    /** Annex II table 4. */
    @ParameterizedTest
    @CsvSource({"4, 0", "5, 0", "7, 0.5", "10, 0.5", "12, 0.7", "25, 0.7", "26, 0.9"})
    void displacement_factor(double power, double floor) {
        assertThat(DisplacementFactorFloor.of(power)).isEqualTo(floor);
    }

    /** Cap from Annex II table 4; formula from memory. */
    @ParameterizedTest
    @CsvSource({"15000, 0.9311", "25000, 0.9581", "30000, 0.9600"})
    void lumen_maintenance_after_the_endurance_test(double hours, double floor) {
        assertThat(LumenMaintenanceFloor.of(hours * HOUR)).isCloseTo(floor, within(6e-5));
    }

    @Test
    void verdicts_name_rule_number_and_margin() {
        LimitVerdict displacement = DisplacementFactorFloor.judge(12, 0.65);
        assertThat(displacement.pass()).isFalse();
        assertThat(displacement.rule()).isEqualTo("(EU) 2019/2020 Annex II table 4, displacement factor");
        assertThat(displacement.margin()).isCloseTo(-0.05, within(1e-12));
    }
}
