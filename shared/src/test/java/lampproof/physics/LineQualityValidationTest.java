package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Distortion, displacement, flicker and emission against printed values and limits. */
class LineQualityValidationTest {

    private static final CurrentFlow CREST_SYMMETRIC = new CurrentFlow(0, Math.PI / 2, Math.PI);

    /** Erickson, Maksimović, 3rd ed., 2020, sect. 20.3, figs. 20.5-20.7: odd orders 1 to 19 print 136 % and 59 %. */
    @Test
    void peak_detecting_rectifier_has_the_printed_distortion() {
        HarmonicSpectrum spectrum = HarmonicSpectrum.ofOdd(100, 91, 73, 52, 32, 19, 15, 15, 13, 9);
        assertThat(spectrum.thd()).isCloseTo(1.356, withinPercentage(0.5));
        assertThat(spectrum.distortionFactor()).isCloseTo(0.593, withinPercentage(0.5));
        assertThat(PowerFactor.of(spectrum.thd(), 1)).isCloseTo(0.593, withinPercentage(0.5));
    }

    /** IEEE Std 1789-2015, clause 8.1.1, as quoted in secondary documents. */
    @Test
    void flicker_limits_follow_the_recommended_practices() {
        assertThat(FlickerLimit.lowRisk(100)).isCloseTo(0.080, within(1e-12));
        assertThat(FlickerLimit.lowRisk(120)).isCloseTo(0.096, within(1e-12));
        assertThat(FlickerLimit.noEffect(100)).isCloseTo(0.0333, within(5e-5));
        assertThat(FlickerLimit.noEffect(120)).isCloseTo(0.040, within(1e-12));
        assertThat(FlickerLimit.lowRisk(1250)).isEqualTo(1);
        assertThat(FlickerLimit.lowRisk(1249)).isLessThan(1);
        assertThat(FlickerLimit.noEffect(3000)).isEqualTo(1);
        assertThat(FlickerLimit.noEffect(2999)).isLessThan(1);
    }

    /**
     * IEC 61000-3-2, Class C above 25 W, table 2 as restated in secondary documents; same verdicts under 30 % x power
     * factor and under 27 %. Spectra recomputed from Erickson, Maksimović, 3rd ed., 2020, eq. (21.31) and from the mean
     * current of the constant on-time buck.
     */
    @Test
    void harmonic_verdicts_name_the_offending_orders() {
        assertThat(offending(DcmBoostDistortion.shape(1.25))).containsExactly(3);
        assertThat(offending(DcmBoostDistortion.shape(1.40))).isEmpty();
        assertThat(offending(DcmBoostDistortion.shape(1.50))).isEmpty();
        assertThat(offending(BuckLineCurrent.constantOnTime(0.1))).isEmpty();
        assertThat(offending(BuckLineCurrent.constantOnTime(0.257))).containsExactly(7, 9);
        assertThat(offending(BuckLineCurrent.constantOnTime(0.5))).containsExactly(5, 9);
    }

    /** Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4: prints 2.7 uF; classes of (EU) 2019/2020, Annex II table 4. */
    @Test
    void displacement_limits_line_capacitance_and_follows_the_power_classes() {
        double capacitance = LineCapacitor.largest(400 / 0.95, 0.99, 265, 50);
        assertThat(capacitance).isCloseTo(2.72e-6, withinPercentage(1));
        assertThat(LineCapacitor.displacementFactor(400 / 0.95, capacitance, 265, 50))
                .isCloseTo(0.99, within(1e-12));
        assertThat(DisplacementFactorFloor.of(5)).isZero();
        assertThat(DisplacementFactorFloor.of(5.1)).isEqualTo(0.5);
        assertThat(DisplacementFactorFloor.of(10.1)).isEqualTo(0.7);
        assertThat(DisplacementFactorFloor.of(25.1)).isEqualTo(0.9);
    }

    /** 47 CFR 18.307 (a); CISPR 16-1-2 networks as restated in secondary documents. */
    @Test
    void conducted_limits_and_artificial_networks_have_the_published_values() {
        assertThat(ConductedLimit.quasiPeak(9e3)).hasValueCloseTo(110.0, within(0.1));
        assertThat(ConductedLimit.quasiPeak(150e3)).hasValueCloseTo(66.0, within(0.1));
        assertThat(ConductedLimit.quasiPeak(500e3)).hasValueCloseTo(56.0, within(0.1));
        assertThat(ConductedLimit.quasiPeak(5e6)).hasValueCloseTo(56.0, within(0.1));
        assertThat(ArtificialNetwork.FROM_9_KHZ.impedance(150e3).norm()).isCloseTo(32.71, within(0.1));
        assertThat(ArtificialNetwork.FROM_150_KHZ.impedance(150e3).norm()).isCloseTo(34.29, within(0.1));
    }

    private static Iterable<Integer> offending(LineCurrentShape shape) {
        return LightingHarmonics.assess(
                        new LineCurrentFigures(40, shape.powerFactor(), shape.spectrum(), CREST_SYMMETRIC))
                .offendingOrders();
    }
}
