package lampproof.rule;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lampproof.prediction.DeckKind;
import lampproof.prediction.NeededFilter;
import lampproof.prediction.NoiseMargin;
import lampproof.prediction.Solution;
import lampproof.quasistatic.ConductedNoise;
import lampproof.unit.PlainNumber;

/** Differential-mode noise of a solved driver against the limits at the mains terminals. */
final class NoiseRules {

    private static final String SUBJECT = "conducted noise, differential mode";
    private static final String RULE = "CISPR 15:2018 (from memory) and 47 CFR 18.307 (a), ";

    private NoiseRules() {}

    /** One verdict for each detector; the noise deck shows the quasi-peak level. A calculation is no proof of compliance. */
    static List<RuleJudgement> verdicts(Solution solution, SimulatedFigures simulated) {
        ConductedNoise noise = solution.noise();
        RuleVerdict quasiPeak =
                verdict("quasi-peak", NoiseMargin.quasiPeak(noise.frequency(), noise::atCrest), solution);
        RuleVerdict average = verdict("average", NoiseMargin.average(noise.frequency(), noise::mean), solution);
        return List.of(
                new RuleJudgement(quasiPeak, simulated(simulated.of(DeckKind.NOISE, NoiseMargin.QUASI_PEAK))),
                RuleJudgement.predicted(average));
    }

    private static RuleVerdict verdict(String detector, NoiseMargin margin, Solution solution) {
        boolean pass = margin.decibels() >= 0;
        RuleVerdict verdict = new RuleVerdict(SUBJECT, pass, RULE + detector, margin.found(), margin.bound());
        return pass ? verdict : verdict.remediedBy(remedy(solution));
    }

    private static Optional<RuleVerdict> simulated(OptionalDouble margin) {
        return margin.isEmpty()
                ? Optional.empty()
                : Optional.of(new RuleVerdict(
                        SUBJECT,
                        margin.getAsDouble() >= 0,
                        RULE + "quasi-peak",
                        "margin " + PlainNumber.signed(margin.getAsDouble(), 1) + " dB",
                        "at least 0 dB"));
    }

    private static String remedy(Solution solution) {
        double needed = NeededFilter.corner(solution.noise(), solution.driver());
        double corner = NeededFilter.corner(solution.driver());
        String has = "the filter corner is " + kilohertz(corner);
        return has + (needed > 0 ? " and would have to be " + kilohertz(needed) : " and no choke is enough");
    }

    /** One prefix for both corners, so that they compare at a glance. */
    private static String kilohertz(double frequency) {
        return PlainNumber.significant(1e-3 * frequency, 3) + " kHz";
    }
}
