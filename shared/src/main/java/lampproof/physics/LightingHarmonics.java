package lampproof.physics;

import java.util.List;

/**
 * The harmonic rules that hold for a lamp of a given power.
 *
 * <p>Below 5 W no limit; 5 W to 25 W {@link SmallLampLimits}; above 25 W {@link ClassCLimits}.
 *
 * <p>Valid for lighting equipment on 220 V to 240 V supplies. A calculation is no proof of compliance.
 *
 * <p>Source: IEC 61000-3-2 edition 5, 2018, read in documents that restate it.
 */
public final class LightingHarmonics {

    private static final String NO_LIMIT = "IEC 61000-3-2 edition 5 of 2018: no limit below 5 W";

    private LightingHarmonics() {}

    /** A line current judged against the rules for its power. */
    public static HarmonicAssessment assess(LineCurrentFigures figures) {
        if (figures.power() < 5) {
            return new HarmonicAssessment(NO_LIMIT, List.of());
        }
        return figures.power() <= 25 ? SmallLampLimits.assess(figures) : ClassCLimits.assess(figures);
    }
}
