package lampproof.physics;

import java.util.ArrayList;
import java.util.List;

/**
 * Harmonic limits of lighting equipment from 5 W to 25 W: one of three alternatives must hold.
 *
 * <p>First: milliampere per watt of table 3. Second: order 3 up to 86 %, order 5 up to 61 %, and current that starts
 * by 60 degrees, has its last peak by 65 degrees and does not stop before 90 degrees. Third: distortion up to 70 %
 * and orders 2: 5 %, 3: 35 %, 5: 25 %, 7: 30 %, 9 and 11: 20 %.
 *
 * <p>Valid for active power from 5 W to 25 W. A current that is symmetric about the crest fails the second
 * alternative.
 *
 * <p>Source: IEC 61000-3-2 edition 5, 2018, with amendment 1, 2020, sub-clause 7.4.3; the angles read in documents
 * that restate them, the percentages and the first alternative from memory: confirm them from the standard.
 */
public final class SmallLampLimits {

    private static final String CLAUSE = "IEC 61000-3-2 edition 5 of 2018, 5 W to 25 W (limits from memory), ";
    private static final String FIRST = CLAUSE + "first alternative: mA/W of table 3";
    private static final String SECOND = CLAUSE + "second alternative: orders 3 and 5 with wave shape";
    private static final String THIRD = CLAUSE + "third alternative: distortion 70 % with orders 2 to 11";

    private static final int WHOLE_CURRENT = 0;

    private SmallLampLimits() {}

    /** All three alternatives, each judged. */
    public static List<HarmonicAssessment> alternatives(LineCurrentFigures figures) {
        return List.of(ClassDLimits.assess(figures, FIRST), waveShape(figures), distortion(figures));
    }

    /** The alternative with the largest margin. */
    public static HarmonicAssessment assess(LineCurrentFigures figures) {
        return HarmonicAssessment.best(alternatives(figures));
    }

    private static HarmonicAssessment waveShape(LineCurrentFigures figures) {
        CurrentFlow flow = figures.flow();
        List<HarmonicVerdict> verdicts = List.of(
                relative(figures, SECOND, 3, 0.86),
                relative(figures, SECOND, 5, 0.61),
                HarmonicVerdict.atMost(SECOND + ", start", WHOLE_CURRENT, flow.start(), Math.toRadians(60)),
                HarmonicVerdict.atMost(SECOND + ", last peak", WHOLE_CURRENT, flow.lastPeak(), Math.toRadians(65)),
                HarmonicVerdict.atLeast(SECOND + ", end", WHOLE_CURRENT, flow.end(), Math.toRadians(90)));
        return new HarmonicAssessment(SECOND, verdicts);
    }

    private static HarmonicAssessment distortion(LineCurrentFigures figures) {
        List<HarmonicVerdict> verdicts = new ArrayList<>();
        double thd = figures.spectrum().thd();
        verdicts.add(HarmonicVerdict.atMost(THIRD + ", distortion", WHOLE_CURRENT, thd, 0.70));
        verdicts.add(relative(figures, THIRD, 2, 0.05));
        verdicts.add(relative(figures, THIRD, 3, 0.35));
        verdicts.add(relative(figures, THIRD, 5, 0.25));
        verdicts.add(relative(figures, THIRD, 7, 0.30));
        verdicts.add(relative(figures, THIRD, 9, 0.20));
        verdicts.add(relative(figures, THIRD, 11, 0.20));
        return new HarmonicAssessment(THIRD, verdicts);
    }

    private static HarmonicVerdict relative(LineCurrentFigures figures, String rule, int order, double limit) {
        return HarmonicVerdict.atMost(rule, order, figures.spectrum().relative(order), limit);
    }
}
