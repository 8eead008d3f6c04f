package lampproof.physics;

import java.util.ArrayList;
import java.util.List;

/**
 * Harmonic limits in milliampere per watt, with their absolute ceilings.
 *
 * <p>Order 3: 3.4 mA/W and 2.30 A; 5: 1.9 and 1.14; 7: 1.0 and 0.77; 9: 0.5 and 0.40; 11: 0.35 and 0.33; 13 to 39:
 * 3.85/n and 0.15 x 15/n, 0.21 A for 13.
 *
 * <p>Valid for odd orders from 3 to 39.
 *
 * <p>Source: IEC 61000-3-2, table 3, and the odd orders of table 1, read in documents that restate them.
 */
public final class ClassDLimits {

    private static final String TABLE = "IEC 61000-3-2 table 3";

    private ClassDLimits() {}

    /** Limit of an odd order from 3 to 39 per watt of active power [A/W]. */
    public static double perWatt(int order) {
        requireLimited(order);
        return switch (order) {
            case 3 -> 3.4e-3;
            case 5 -> 1.9e-3;
            case 7 -> 1.0e-3;
            case 9 -> 0.5e-3;
            case 11 -> 0.35e-3;
            default -> 3.85e-3 / order;
        };
    }

    /** Ceiling of an odd order from 3 to 39, whatever the power [A]. */
    public static double absolute(int order) {
        requireLimited(order);
        return switch (order) {
            case 3 -> 2.30;
            case 5 -> 1.14;
            case 7 -> 0.77;
            case 9 -> 0.40;
            case 11 -> 0.33;
            case 13 -> 0.21;
            default -> 0.15 * 15 / order;
        };
    }

    /** A line current judged against the limits per watt of the table. */
    public static HarmonicAssessment assess(LineCurrentFigures figures) {
        return assess(figures, TABLE);
    }

    static HarmonicAssessment assess(LineCurrentFigures figures, String rule) {
        List<HarmonicVerdict> verdicts = new ArrayList<>();
        for (int order = 3; order <= HarmonicSpectrum.HIGHEST_ORDER; order += 2) {
            double perWatt = figures.spectrum().current(order) / figures.power();
            double limit = Math.min(perWatt(order), absolute(order) / figures.power());
            verdicts.add(HarmonicVerdict.atMost(rule, order, perWatt, limit));
        }
        return new HarmonicAssessment(rule, verdicts);
    }

    private static void requireLimited(int order) {
        Require.within("limited harmonic order [-]", order, 3, HarmonicSpectrum.HIGHEST_ORDER);
        if (order % 2 == 0) {
            throw new IllegalArgumentException("limited harmonic order must be odd, found " + order);
        }
    }
}
