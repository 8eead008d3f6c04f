package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HarmonicSpectrumTest {

    /** Erickson, Maksimović, 3rd ed., 2020, sect. 20.3: prints 99.5, 98 and 95 %; recomputed 99.50, 98.06, 94.96 %. */
    @ParameterizedTest
    @CsvSource({"10, 0.9950", "20, 0.9806", "33, 0.9496"})
    void distortion_factor_of_one_harmonic_is_as_printed(double third, double factor) {
        assertThat(HarmonicSpectrum.ofOdd(100, third).distortionFactor()).isCloseTo(factor, within(5e-5));
    }

    @Test
    void odd_and_full_lists_say_the_same() {
        HarmonicSpectrum odd = HarmonicSpectrum.ofOdd(2, 1, 0.5);
        HarmonicSpectrum full = HarmonicSpectrum.of(2, 0, 1, 0, 0.5);
        assertThat(odd.highestOrder()).isEqualTo(full.highestOrder()).isEqualTo(5);
        assertThat(odd.relative(3)).isEqualTo(full.relative(3)).isEqualTo(0.5);
        assertThat(odd.current(4)).isZero();
        assertThat(odd.rms()).isCloseTo(Math.sqrt(5.25), within(1e-12));
        assertThat(odd.thd()).isCloseTo(Math.sqrt(1.25) / 2, within(1e-12));
    }

    @Test
    void an_order_that_is_not_held_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> HarmonicSpectrum.ofOdd(1, 0.1).current(5))
                .withMessage("harmonic order [-] must be 1.0 to 3.0, found 5.0");
    }
}
