package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DcmBoostDistortionTest {

    private static final Offset<Double> FOUR_DIGITS = within(6e-5);

    /** Recomputed from Erickson, Maksimović, 3rd ed., 2020, eq. (21.31) by adaptive quadrature (QUADPACK). */
    @ParameterizedTest
    @CsvSource({
        "1.05, 0.8304, 0.6709, 0.5701, 0.2988, 0.1607",
        "1.10, 0.8941, 0.5010, 0.4588, 0.1827, 0.0772",
        "1.20, 0.9419, 0.3567, 0.3435, 0.0914, 0.0288",
        "1.25, 0.9536, 0.3158, 0.3075, 0.0690, 0.0198",
        "1.30, 0.9618, 0.2845, 0.2791, 0.0534, 0.0144",
        "1.40, 0.9726, 0.2390, 0.2365, 0.0335, 0.0086",
        "1.50, 0.9792, 0.2070, 0.2058, 0.0217, 0.0059",
        "1.765, 0.9883, 0.1542, 0.1540, 0.0068, 0.0033",
        "2.00, 0.9921, 0.1264, 0.1263, 0.0014, 0.0026",
        "3.00, 0.9974, 0.0722, 0.0720, 0.0039, 0.0019"
    })
    void power_factor_distortion_and_harmonics_over_the_output_ratio(
            double ratio, double powerFactor, double thd, double third, double fifth, double seventh) {
        LineCurrentShape shape = DcmBoostDistortion.shape(ratio);
        assertThat(DcmBoostDistortion.powerFactor(ratio)).isCloseTo(powerFactor, FOUR_DIGITS);
        assertThat(DcmBoostDistortion.thd(ratio)).isCloseTo(thd, FOUR_DIGITS);
        assertThat(shape.relative(3)).isCloseTo(third, FOUR_DIGITS);
        assertThat(shape.relative(5)).isCloseTo(fifth, FOUR_DIGITS);
        assertThat(shape.relative(7)).isCloseTo(seventh, FOUR_DIGITS);
    }

    @Test
    void closed_form_and_quadrature_agree() {
        LineCurrentShape shape = DcmBoostDistortion.shape(1.15);
        assertThat(shape.powerFactor()).isCloseTo(DcmBoostDistortion.powerFactor(1.15), within(1e-10));
        assertThat(shape.thd()).isCloseTo(DcmBoostDistortion.thd(1.15), within(1e-9));
    }

    @Test
    void a_string_below_the_crest_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> DcmBoostDistortion.powerFactor(0.9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DcmBoostDistortion.shape(1))
                .withMessageStartingWith("output ratio [-] must be above 1.0");
    }
}
