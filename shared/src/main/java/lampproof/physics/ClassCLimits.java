package lampproof.physics;

import java.util.ArrayList;
import java.util.List;

/**
 * Harmonic limits of lighting equipment above 25 W.
 *
 * <p>Over the fundamental: order 2: 2 %; 3: the lower of 30 % x power factor and 27 %; 5: 10 %; 7: 7 %; 9: 5 %; odd
 * 11 to 39: 3 %.
 *
 * <p>Valid for active power above 25 W and 220 V to 240 V supplies. Editions differ in the third harmonic; the
 * stricter limit is used and named.
 *
 * <p>Source: IEC 61000-3-2, table 2, editions up to 2014, read in documents that restate it; the fixed 27 % of
 * edition 5, 2018, from memory.
 */
public final class ClassCLimits {

    private static final String TABLE = "IEC 61000-3-2 Class C above 25 W, table 2";
    private static final String OLD_THIRD = TABLE + ", editions up to 2014, 30 % x power factor";
    private static final String NEW_THIRD = TABLE + ", edition 5 of 2018, 27 %";

    private ClassCLimits() {}

    /**
     * Limit of an order.
     *
     * @param order 2, or odd from 3 to 39 [-]
     * @param powerFactor power factor of the circuit [-]
     * @return current over the fundamental [-]
     */
    public static double relative(int order, double powerFactor) {
        requireLimited(order);
        return switch (order) {
            case 2 -> 0.02;
            case 3 -> Math.min(0.27, 0.30 * powerFactor);
            case 5 -> 0.10;
            case 7 -> 0.07;
            case 9 -> 0.05;
            default -> 0.03;
        };
    }

    /** A line current judged against all orders of the table. */
    public static HarmonicAssessment assess(LineCurrentFigures figures) {
        List<HarmonicVerdict> verdicts = new ArrayList<>();
        verdicts.add(verdict(figures, 2));
        for (int order = 3; order <= HarmonicSpectrum.HIGHEST_ORDER; order += 2) {
            verdicts.add(verdict(figures, order));
        }
        return new HarmonicAssessment(TABLE, verdicts);
    }

    private static HarmonicVerdict verdict(LineCurrentFigures figures, int order) {
        double limit = relative(order, figures.powerFactor());
        String rule = order == 3 ? thirdRule(figures.powerFactor()) : TABLE;
        return HarmonicVerdict.atMost(rule, order, figures.spectrum().relative(order), limit);
    }

    private static String thirdRule(double powerFactor) {
        return 0.30 * powerFactor < 0.27 ? OLD_THIRD : NEW_THIRD;
    }

    private static void requireLimited(int order) {
        Require.within("limited harmonic order [-]", order, 2, HarmonicSpectrum.HIGHEST_ORDER);
        if (order != 2 && order % 2 == 0) {
            throw new IllegalArgumentException("limited harmonic order must be 2 or odd, found " + order);
        }
    }
}
