package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundaryBoostStressTest {

    private static final Percentage FOUR_DIGITS = withinPercentage(0.05);

    /**
     * First row: peak printed as 7 A and current limit (1.2 times) as 8.4 A in Fairchild AN-6086 rev. 1.0.4, 2010;
     * the rest recomputed by integration of the triangles of Erickson, Maksimović, 3rd ed., 2020, sect. 21.3.3.
     */
    @ParameterizedTest
    @CsvSource({
        "85, 400, 210.526, 7.005, 2.860, 2.468, 1.444, 1.704, 0.5263",
        "265, 400, 210.526, 2.247, 0.9173, 0.4151, 0.8181, 0.1889, 0.5263",
        "230, 400, 15, 0.1845, 0.07531, 0.04191, 0.06257, 0.02122, 0.03750",
        "120, 200, 10, 0.2357, 0.09623, 0.05089, 0.08166, 0.02503, 0.05000"
    })
    void stresses_are_as_recomputed(
            double lineRms,
            double output,
            double power,
            double peak,
            double inductorRms,
            double switchRms,
            double diodeRms,
            double switchMean,
            double diodeMean) {
        BoundaryBoostStress stress = new BoundaryBoostStress(Math.sqrt(2) * lineRms, output, power);
        assertThat(stress.peakCurrent()).isCloseTo(peak, FOUR_DIGITS);
        assertThat(stress.inductorRms()).isCloseTo(inductorRms, FOUR_DIGITS);
        assertThat(stress.switchRms()).isCloseTo(switchRms, FOUR_DIGITS);
        assertThat(stress.diodeRms()).isCloseTo(diodeRms, FOUR_DIGITS);
        assertThat(stress.switchMean()).isCloseTo(switchMean, FOUR_DIGITS);
        assertThat(stress.diodeMean()).isCloseTo(diodeMean, FOUR_DIGITS);
    }

    @Test
    void rms_currents_agree_with_a_sum_of_triangles() {
        BoundaryBoostStress stress = new BoundaryBoostStress(325, 420, 7);
        double switchSquares = 0;
        double diodeSquares = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double sine = Math.sin(Math.PI * (i + 0.5) / steps);
            double square = Math.pow(stress.peakCurrent() * sine, 2) / 3;
            double diodeShare = 325 * sine / 420;
            switchSquares += square * (1 - diodeShare) / steps;
            diodeSquares += square * diodeShare / steps;
        }
        assertThat(stress.switchRms()).isCloseTo(Math.sqrt(switchSquares), within(1e-9));
        assertThat(stress.diodeRms()).isCloseTo(Math.sqrt(diodeSquares), within(1e-9));
        assertThat(stress.outputCapacitorRms())
                .isCloseTo(Math.sqrt(diodeSquares - Math.pow(7.0 / 420, 2)), within(1e-9));
    }
}
