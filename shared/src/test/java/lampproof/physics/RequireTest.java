package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RequireTest {

    @Test
    void every_message_holds_quantity_range_and_value() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.positive("inductance [H]", -1e-3))
                .withMessage("inductance [H] must be above 0 and finite, found -0.001");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.notNegative("power [W]", -2))
                .withMessage("power [W] must be 0 or more and finite, found -2.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.within("duty [-]", 1.2, 0, 1))
                .withMessage("duty [-] must be 0.0 to 1.0, found 1.2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.between("duty [-]", 0, 0, 1))
                .withMessage("duty [-] must be above 0.0 and below 1.0, found 0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Require.below("line peak [V]", 420, "output voltage [V]", 400))
                .withMessage("line peak [V] must be below output voltage [V], found 420.0 against 400.0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY})
    void what_is_no_number_is_refused_everywhere(double value) {
        assertThatIllegalArgumentException().isThrownBy(() -> Require.positive("x", value));
        assertThatIllegalArgumentException().isThrownBy(() -> Require.notNegative("x", value));
        assertThatIllegalArgumentException().isThrownBy(() -> Require.within("x", value, 0, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Require.between("x", value, 0, 1));
    }

    @Test
    void the_ends_of_a_range_are_allowed_where_it_says_so() {
        assertThatCode(() -> Require.within("x", 0, 0, 1)).doesNotThrowAnyException();
        assertThatCode(() -> Require.within("x", 1, 0, 1)).doesNotThrowAnyException();
        assertThatCode(() -> Require.notNegative("x", 0)).doesNotThrowAnyException();
        assertThatIllegalArgumentException().isThrownBy(() -> Require.positive("x", Double.POSITIVE_INFINITY));
    }
}
