package lampproof.instrument;

import lampproof.measure.Harmonics;
import lampproof.measure.Measured;
import lampproof.physics.HarmonicAssessment;
import lampproof.physics.HarmonicSpectrum;
import lampproof.physics.HarmonicVerdict;
import lampproof.physics.LightingHarmonics;
import lampproof.physics.LineCurrentFigures;
import lampproof.unit.PlainNumber;

/** The harmonics of a measured line current against the limits for lamps. */
final class HarmonicLimit {

    private static final String RULES = "IEC 61000-3-2 Class C";
    private static final int HIGHEST_LIMITED = 39;

    private HarmonicLimit() {}

    static CaptureLimit of(Measured power, Measured powerFactor, Harmonics current, int highestOrder, LineFlow flow) {
        if (highestOrder < HIGHEST_LIMITED) {
            return CaptureLimit.noVerdict(
                    RULES,
                    "the record resolves orders up to " + highestOrder + " only, limits go up to " + HIGHEST_LIMITED);
        }
        Measured all = power.with(powerFactor, (p, pf) -> p).with(current.result(), (p, fundamental) -> p);
        if (!all.present() || !flow.present()) {
            return CaptureLimit.noVerdict(RULES, all.present() ? "the window holds no whole period" : all.note());
        }
        if (!(power.value() > 0)) {
            return CaptureLimit.noVerdict(RULES, "no power flows");
        }
        return text(LightingHarmonics.assess(new LineCurrentFigures(
                power.value(), Math.min(1, powerFactor.value()), spectrum(current), flow.found())));
    }

    private static HarmonicSpectrum spectrum(Harmonics current) {
        double[] fromSecond = new double[HIGHEST_LIMITED - 1];
        for (int order = 2; order <= HIGHEST_LIMITED; order++) {
            fromSecond[order - 2] = current.rms(order).value();
        }
        return HarmonicSpectrum.of(current.rms(1).value(), fromSecond);
    }

    private static CaptureLimit text(HarmonicAssessment assessment) {
        String text = assessment
                .deciding()
                .map(verdict -> "nearest to its limit: " + place(verdict) + number(verdict.value()) + ", limit "
                        + number(verdict.limit()))
                .orElse("no limit applies");
        return CaptureLimit.of(assessment.rules(), assessment.pass(), text);
    }

    private static String number(double value) {
        return PlainNumber.significant(value, 3);
    }

    private static String place(HarmonicVerdict verdict) {
        return verdict.order() == 0 ? verdict.rule() + " " : "order " + verdict.order() + " ";
    }
}
