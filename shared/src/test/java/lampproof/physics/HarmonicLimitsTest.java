package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits of IEC 61000-3-2 as restated in secondary documents; percentages from 5 W to 25 W from memory. */
class HarmonicLimitsTest {

    private static final CurrentFlow CREST_SYMMETRIC = new CurrentFlow(0, Math.PI / 2, Math.PI);

    /** IEC 61000-3-2, table 2: 30 % x power factor. */
    @Test
    void third_harmonic_limit_is_the_stricter_of_both_editions() {
        assertThat(ClassCLimits.relative(3, 0.80)).isCloseTo(0.24, within(1e-12));
        assertThat(ClassCLimits.relative(3, 0.95)).isCloseTo(0.27, within(1e-12));
        assertThat(ClassCLimits.assess(figures(40, BuckLineCurrent.constantOnTime(0.7)))
                        .verdicts()
                        .get(1)
                        .rule())
                .isEqualTo("IEC 61000-3-2 Class C above 25 W, table 2, editions up to 2014, 30 % x power factor");
        assertThat(ClassCLimits.assess(figures(40, DcmBoostDistortion.shape(1.4)))
                        .verdicts()
                        .get(1)
                        .rule())
                .isEqualTo("IEC 61000-3-2 Class C above 25 W, table 2, edition 5 of 2018, 27 %");
    }

    @ParameterizedTest
    @CsvSource({"2, 0.02", "5, 0.10", "7, 0.07", "9, 0.05", "11, 0.03", "39, 0.03"})
    void other_orders_above_25_W(int order, double limit) {
        assertThat(ClassCLimits.relative(order, 0.9)).isEqualTo(limit);
    }

    /**
     * IEC 61000-3-2, table 3 and the odd orders of table 1: mA/W and A; last column recomputed, % at 230 V in phase.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 3.4, 2.30, 78.2",
        "5, 1.9, 1.14, 43.7",
        "7, 1.0, 0.77, 23.0",
        "9, 0.5, 0.40, 11.5",
        "11, 0.35, 0.33, 8.05",
        "13, 0.29615, 0.21, 6.81",
        "15, 0.25667, 0.15, 5.90"
    })
    void limits_per_watt(int order, double milliampere, double absolute, double percent) {
        assertThat(ClassDLimits.perWatt(order)).isCloseTo(milliampere * 1e-3, within(1e-8));
        assertThat(ClassDLimits.absolute(order)).isCloseTo(absolute, within(1e-12));
        assertThat(ClassDLimits.perWatt(order) * 230 * 100).isCloseTo(percent, within(0.06));
    }

    /** Recomputed: output ratio, offending orders above 25 W. */
    @Test
    void verdicts_above_25_W() {
        assertThat(offending(DcmBoostDistortion.shape(1.20))).containsExactly(3);
        assertThat(offending(BuckLineCurrent.constantOnTime(0.20))).containsExactly(9, 11);
        assertThat(offending(BuckLineCurrent.constantOnTime(0.40))).contains(5, 11);
        assertThat(offending(BuckLineCurrent.constantOnTime(0.60))).contains(3, 7);
        assertThat(offending(BuckLineCurrent.constantCurrent(0.5))).contains(5, 7, 11);
    }

    /** Recomputed: third harmonics of 0.2058 and 0.2255 against the 27 % of edition 5. */
    @Test
    void the_order_closest_to_its_limit_decides() {
        HarmonicVerdict boost = deciding(DcmBoostDistortion.shape(1.5));
        assertThat(boost.order()).isEqualTo(3);
        assertThat(boost.relativeMargin()).isCloseTo(1 - 0.2058 / 0.27, within(5e-4));
        HarmonicVerdict buck = deciding(BuckLineCurrent.constantOnTime(0.1));
        assertThat(buck.order()).isEqualTo(3);
        assertThat(buck.margin()).isCloseTo(0.27 - 0.2255, within(5e-5));
        assertThat(buck.pass()).isTrue();
    }

    /** Recomputed with percentages from memory: all shapes but the last pass by the third alternative. */
    @Test
    void verdicts_of_the_third_alternative_from_5_W_to_25_W() {
        assertThat(alternative(2, DcmBoostDistortion.shape(1.20)).pass()).isTrue();
        assertThat(alternative(2, DcmBoostDistortion.shape(1.25)).pass()).isTrue();
        assertThat(alternative(2, DcmBoostDistortion.shape(1.30)).pass()).isTrue();
        assertThat(alternative(2, BuckLineCurrent.constantOnTime(0.10)).pass()).isTrue();
        assertThat(alternative(2, BuckLineCurrent.constantOnTime(0.257)).pass()).isTrue();
        assertThat(alternative(2, BuckLineCurrent.constantOnTime(0.50)).pass()).isTrue();
        assertThat(alternative(2, BuckLineCurrent.constantCurrent(0.5)).pass()).isTrue();
        HarmonicAssessment failing = alternative(2, BuckLineCurrent.constantOnTime(0.60));
        assertThat(failing.offendingOrders()).containsExactly(3);
        assertThat(failing.deciding().orElseThrow().value()).isCloseTo(0.401, within(5e-4));
    }

    @Test
    void a_current_symmetric_about_the_crest_fails_the_second_alternative_by_its_last_peak() {
        HarmonicAssessment sine = alternative(1, LineCurrentShape.of(Math::sin, 0, Math.PI));
        assertThat(sine.pass()).isFalse();
        HarmonicVerdict peak = sine.deciding().orElseThrow();
        assertThat(peak.rule())
                .isEqualTo("IEC 61000-3-2 edition 5 of 2018, 5 W to 25 W (limits from memory), "
                        + "second alternative: orders 3 and 5 with wave shape, last peak");
        assertThat(Math.toDegrees(peak.value())).isCloseTo(90, within(1e-9));
        assertThat(Math.toDegrees(peak.margin())).isCloseTo(-25, within(1e-9));
        assertThat(sine.offendingOrders()).containsExactly(0);
    }

    @Test
    void a_peak_detecting_lamp_passes_the_second_alternative_alone() {
        HarmonicSpectrum spectrum = HarmonicSpectrum.ofOdd(
                0.03, 0.025, 0.017, 0.008, 0.003, 0.003, 0.003, 0.002, 0.001, 0.001, 0.001, 0, 0, 0, 0, 0, 0, 0, 0, 0);
        CurrentFlow flow = new CurrentFlow(Math.toRadians(45), Math.toRadians(64), Math.toRadians(95));
        LineCurrentFigures figures = new LineCurrentFigures(6, 0.65, spectrum, flow);
        assertThat(SmallLampLimits.alternatives(figures))
                .extracting(HarmonicAssessment::pass)
                .containsExactly(false, true, false);
        HarmonicAssessment best = LightingHarmonics.assess(figures);
        assertThat(best.pass()).isTrue();
        assertThat(best.rules()).contains("second alternative");
    }

    @Test
    void the_power_chooses_the_rules() {
        LineCurrentShape square = BuckLineCurrent.constantCurrent(0);
        HarmonicAssessment tiny = LightingHarmonics.assess(figures(4.9, square));
        assertThat(tiny.pass()).isTrue();
        assertThat(tiny.deciding()).isEmpty();
        assertThat(tiny.rules()).isEqualTo("IEC 61000-3-2 edition 5 of 2018: no limit below 5 W");
        assertThat(LightingHarmonics.assess(figures(5, square)).pass()).isTrue();
        assertThat(LightingHarmonics.assess(figures(25, square)).pass()).isTrue();
        assertThat(LightingHarmonics.assess(figures(25.1, square)).pass()).isFalse();
    }

    /** At 2 kW in phase the absolute ceiling of 2.3 A is far stricter than 3.4 mA/W. */
    @Test
    void the_ceiling_rules_at_high_power() {
        HarmonicSpectrum spectrum =
                figures(2000, BuckLineCurrent.constantCurrent(0)).spectrum();
        HarmonicAssessment heavy = ClassDLimits.assess(new LineCurrentFigures(2000, 0.9, spectrum, CREST_SYMMETRIC));
        assertThat(heavy.verdicts().get(0).limit()).isCloseTo(2.30 / 2000, within(1e-12));
        assertThat(heavy.pass()).isFalse();
    }

    @Test
    void orders_without_limit_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClassCLimits.relative(4, 0.9))
                .withMessage("limited harmonic order must be 2 or odd, found 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClassDLimits.perWatt(2))
                .withMessage("limited harmonic order [-] must be 3.0 to 39.0, found 2.0");
    }

    private static List<Integer> offending(LineCurrentShape shape) {
        return ClassCLimits.assess(figures(40, shape)).offendingOrders();
    }

    private static HarmonicVerdict deciding(LineCurrentShape shape) {
        return LightingHarmonics.assess(figures(40, shape)).deciding().orElseThrow();
    }

    private static HarmonicAssessment alternative(int index, LineCurrentShape shape) {
        return SmallLampLimits.alternatives(figures(10, shape)).get(index);
    }

    /** A shape scaled to a power on 230 V. */
    private static LineCurrentFigures figures(double power, LineCurrentShape shape) {
        double scale = power / (230 * shape.powerFactor() * shape.rms());
        double[] fromSecond = new double[38];
        for (int order = 2; order <= 39; order++) {
            fromSecond[order - 2] = scale * shape.harmonic(order);
        }
        HarmonicSpectrum spectrum = HarmonicSpectrum.of(scale * shape.harmonic(1), fromSecond);
        return new LineCurrentFigures(power, shape.powerFactor(), spectrum, CREST_SYMMETRIC);
    }
}
