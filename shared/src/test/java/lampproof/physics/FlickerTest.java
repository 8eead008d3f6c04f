package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlickerTest {

    /** IEEE Std 1789-2015, definition of modulation; IES flicker index m / pi: 60 mA with 24 mA is 40 % and 0.12732. */
    @Test
    void a_sine_on_a_constant() {
        double[] current = samples(angle -> 60 + 24 * Math.sin(2 * angle));
        assertThat(PercentFlicker.ofSamples(current)).isCloseTo(0.400, within(1e-6));
        assertThat(FlickerIndex.ofSamples(current)).isCloseTo(0.12732, within(1e-5));
        assertThat(FlickerIndex.sine(0.4)).isCloseTo(0.12732, within(5e-6));
    }

    /** Recomputed from the definition of the flicker index. */
    @Test
    void index_of_common_waveforms() {
        assertThat(FlickerIndex.sine(0.08)).isCloseTo(0.02546, within(5e-6));
        assertThat(FlickerIndex.sine(0.30)).isCloseTo(0.09549, within(5e-6));
        assertThat(FlickerIndex.square(0.50)).isEqualTo(0.500);
        assertThat(FlickerIndex.square(0.25)).isEqualTo(0.750);
        assertThat(FlickerIndex.ofSamples(samples(Math::sin))).isCloseTo(0.2105, within(5e-5));
        assertThat(FlickerIndex.ofSamples(samples(angle -> Math.pow(Math.sin(angle), 2))))
                .isCloseTo(0.3183, within(5e-5));
        assertThat(FlickerIndex.ofSamples(samples(angle -> Math.sin(angle) > 0.5 ? 1 : 0)))
                .isCloseTo(0.3333, within(1e-4));
    }

    /** Recomputed: current of the constant on-time buck without a capacitor, over string voltage over line peak. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.3233", "0.5, 0.4184", "0.7, 0.5407"})
    void index_of_the_buck_without_storage(double ratio, double index) {
        double[] light = samples(angle -> Math.max(0, Math.sin(angle) - ratio));
        assertThat(PercentFlicker.ofSamples(light)).isEqualTo(1);
        assertThat(FlickerIndex.ofSamples(light)).isCloseTo(index, within(6e-5));
    }

    /** IEEE Std 1789-2015, clause 8.1.1, as quoted: below 90 Hz 0.025 % and 0.01 % per hertz, seizure 5 %. */
    @Test
    void slow_flicker_is_limited_most() {
        assertThat(FlickerLimit.lowRisk(80)).isCloseTo(0.020, within(1e-12));
        assertThat(FlickerLimit.noEffect(80)).isCloseTo(0.008, within(1e-12));
        assertThat(FlickerLimit.seizure(80)).isEqualTo(0.05);
        assertThat(FlickerLimit.seizure(100)).isEqualTo(1);
    }

    @Test
    void verdicts_name_the_practice() {
        LimitVerdict lowRisk = FlickerLimit.judgeLowRisk(100, 0.10);
        assertThat(lowRisk.pass()).isFalse();
        assertThat(lowRisk.rule()).isEqualTo("IEEE 1789-2015 practice 1, low risk");
        assertThat(lowRisk.limit()).isCloseTo(0.08, within(1e-12));
        assertThat(FlickerLimit.judgeNoEffect(100, 0.03).pass()).isTrue();
    }

    /** Recomputed with constants of CIE TN 006:2016 from memory. */
    @Test
    void stroboscopic_visibility() {
        assertThat(StroboscopicVisibility.threshold(100)).isCloseTo(0.2563, within(6e-5));
        assertThat(StroboscopicVisibility.threshold(120)).isCloseTo(0.2757, within(6e-5));
        assertThat(StroboscopicVisibility.threshold(200)).isCloseTo(0.3654, within(6e-5));
        assertThat(StroboscopicVisibility.of(100, 0.10)).isCloseTo(0.390, within(6e-4));
        assertThat(StroboscopicVisibility.of(100, 0.1025)).isCloseTo(0.4, within(6e-4));
        assertThat(StroboscopicVisibility.of(120, 0.1103)).isCloseTo(0.4, within(6e-4));
        assertThat(StroboscopicVisibility.of(100, rectifiedSine())).isCloseTo(2.60, within(0.006));
        assertThat(StroboscopicVisibility.of(120, rectifiedSine())).isCloseTo(2.42, within(0.006));
        assertThat(StroboscopicVisibility.judge(0.45).pass()).isFalse();
    }

    /** First-order circuit, recomputed. */
    @Test
    void a_capacitor_across_the_string_takes_ripple_away() {
        assertThat(LedRippleFilter.depth(1, 200, 4.7e-6, 100)).isCloseTo(0.861, within(5e-4));
        assertThat(LedRippleFilter.depth(1, 200, 10e-6, 120)).isCloseTo(0.553, within(5e-4));
        assertThat(LedRippleFilter.depth(1, 300, 4.7e-6, 100)).isCloseTo(0.7485, within(5e-5));
        assertThat(LedRippleFilter.capacitance(1, 300, 0.30, 100)).isCloseTo(16.9e-6, within(0.05e-6));
    }

    @Test
    void negative_light_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PercentFlicker.of(1, -0.1))
                .withMessage("smallest light must be 0.0 to 1.0, found -0.1");
    }

    private static double[] samples(DoubleUnaryOperator light) {
        int count = 36_000;
        return IntStream.range(0, count)
                .mapToDouble(i -> light.applyAsDouble(i * Math.PI / count))
                .toArray();
    }

    private static double[] rectifiedSine() {
        return IntStream.rangeClosed(1, 20)
                .mapToDouble(m -> 2 / (4.0 * m * m - 1))
                .toArray();
    }
}
