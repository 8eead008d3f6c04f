package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values recomputed by adaptive quadrature (QUADPACK) of mean inductor current times duty; no table was readable. */
class BuckLineCurrentTest {

    private static final Offset<Double> FOUR_DIGITS = within(6e-5);

    /** Fourier series of the 120-degree block: no third, 1/5, 1/7, distortion 31.08 %. */
    @Test
    void block_of_120_degrees_has_the_harmonics_of_its_series() {
        LineCurrentShape block = BuckLineCurrent.constantCurrent(0.5);
        assertThat(block.relative(5)).isCloseTo(1.0 / 5, within(1e-10));
        assertThat(block.relative(7)).isCloseTo(1.0 / 7, within(1e-10));
        assertThat(block.thd()).isCloseTo(0.3108, FOUR_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({
        "0.10, 168.5, 0.9707, 0.247, 0.2255, 0.0799, 0.0240, 0.0023",
        "0.20, 156.9, 0.9892, 0.148, 0.1117, 0.0233, 0.0540, 0.0534",
        "0.257, 150.2, 0.9914, 0.132, 0.0442, 0.0713, 0.0761, 0.0538",
        "0.30, 145.1, 0.9902, 0.141, 0.0080, 0.1008, 0.0814, 0.0426",
        "0.40, 132.8, 0.9789, 0.209, 0.1335, 0.1426, 0.0573, 0.0067",
        "0.50, 120.0, 0.9563, 0.306, 0.2645, 0.1381, 0.0064, 0.0516",
        "0.60, 106.3, 0.9217, 0.421, 0.4011, 0.0760, 0.0806, 0.0454",
        "0.70, 91.1, 0.8719, 0.562, 0.5430, 0.0557, 0.1135, 0.0287",
        "0.80, 73.7, 0.7993, 0.752, 0.6902, 0.2699, 0.0261, 0.1020"
    })
    void constant_on_time(
            double ratio,
            double angle,
            double powerFactor,
            double thd,
            double third,
            double fifth,
            double seventh,
            double ninth) {
        LineCurrentShape shape = BuckLineCurrent.constantOnTime(ratio);
        assertThat(Math.toDegrees(BuckLineCurrent.conductionAngle(ratio))).isCloseTo(angle, within(0.06));
        assertThat(shape.powerFactor()).isCloseTo(powerFactor, FOUR_DIGITS);
        assertThat(shape.thd()).isCloseTo(thd, within(6e-4));
        assertThat(shape.relative(3)).isCloseTo(third, FOUR_DIGITS);
        assertThat(shape.relative(5)).isCloseTo(fifth, FOUR_DIGITS);
        assertThat(shape.relative(7)).isCloseTo(seventh, FOUR_DIGITS);
        assertThat(shape.relative(9)).isCloseTo(ninth, FOUR_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.9258, 0.3200, 0.1763",
        "0.2, 0.9448, 0.2800, 0.1091",
        "0.3, 0.9566, 0.2133, 0.0099",
        "0.4, 0.9605, 0.1200, 0.1021",
        "0.5, 0.9549, 0.0000, 0.2000",
        "0.6, 0.9374, 0.1467, 0.2493",
        "0.7, 0.9035, 0.3200, 0.2077",
        "0.8, 0.8440, 0.5200, 0.0253"
    })
    void constant_line_current(double ratio, double powerFactor, double third, double fifth) {
        assertShape(BuckLineCurrent.constantCurrent(ratio), powerFactor, third, fifth);
    }

    @ParameterizedTest
    @CsvSource({
        "0.2, 0.6981, 0.7138, 0.4505",
        "0.3, 0.8012, 0.5479, 0.1772",
        "0.4, 0.8642, 0.3675, 0.0626",
        "0.5, 0.8978, 0.1730, 0.2405",
        "0.6, 0.9062, 0.0353, 0.3251",
        "0.7, 0.8886, 0.2570, 0.2821",
        "0.8, 0.8384, 0.4918, 0.0741"
    })
    void constant_inductor_current(double ratio, double powerFactor, double third, double fifth) {
        assertShape(BuckLineCurrent.constantInductorCurrent(ratio), powerFactor, third, fifth);
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.9980", "0.2, 0.9919", "0.3, 0.9808", "0.4, 0.9640", "0.5, 0.9400", "0.6, 0.9067", "0.7, 0.8598"
    })
    void constant_duty(double ratio, double powerFactor) {
        assertThat(BuckLineCurrent.constantDuty(ratio).powerFactor()).isCloseTo(powerFactor, FOUR_DIGITS);
    }

    @Test
    void a_string_above_the_crest_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BuckLineCurrent.constantOnTime(1.1))
                .withMessage("output ratio [-] must be 0.0 to 1.0, found 1.1");
    }

    private static void assertShape(LineCurrentShape shape, double powerFactor, double third, double fifth) {
        assertThat(shape.powerFactor()).isCloseTo(powerFactor, FOUR_DIGITS);
        assertThat(shape.relative(3)).isCloseTo(third, FOUR_DIGITS);
        assertThat(shape.relative(5)).isCloseTo(fifth, FOUR_DIGITS);
    }
}
