package lampproof.rule;

import java.util.List;
import java.util.stream.Stream;
import lampproof.prediction.LineCorners;

/** The verdicts of all rules on a design: limits of standards, the stability of its control, and the ratings of its parts. */
public final class RuleVerdicts {

    private RuleVerdicts() {}

    /** One verdict for each rule; faults and surges are integrated in time. A calculation is no proof of compliance. */
    public static List<RuleVerdict> of(LineCorners corners) {
        return Stream.of(
                        LimitVerdicts.of(corners).stream(),
                        NoiseRules.verdicts(corners.nominal()).stream(),
                        RatedUses.of(corners).stream().map(RatedUse::verdict))
                .flatMap(verdicts -> verdicts)
                .toList();
    }
}
