package lampproof.rule;

import java.util.List;
import java.util.stream.Stream;
import lampproof.prediction.LineCorners;

/** The verdicts of all rules on a design: limits of standards, the stability of its control, and the ratings of its parts. */
public final class RuleVerdicts {

    private RuleVerdicts() {}

    /** One verdict for each rule; faults and surges are integrated in time. A calculation is no proof of compliance. */
    public static List<RuleVerdict> of(LineCorners corners) {
        return RuleJudgement.decisive(of(corners, SimulatedFigures.NONE));
    }

    /** The same, and the verdicts on the simulated circuit beside them. */
    public static List<RuleJudgement> of(LineCorners corners, SimulatedFigures simulated) {
        return Stream.of(
                        LimitVerdicts.of(corners, simulated).stream(),
                        NoiseRules.verdicts(corners.nominal(), simulated).stream(),
                        RatedUses.judged(corners, simulated).stream())
                .flatMap(verdicts -> verdicts)
                .toList();
    }
}
