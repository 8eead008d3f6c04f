package lampproof.rule;

import java.util.List;
import lampproof.prediction.NeededFilter;
import lampproof.prediction.NoiseMargin;
import lampproof.prediction.Solution;
import lampproof.quasistatic.ConductedNoise;
import lampproof.unit.PlainNumber;

/** Differential-mode noise of a solved driver against the limits at the mains terminals. */
public final class NoiseRules {

    private static final String SUBJECT = "conducted noise, differential mode";
    private static final String RULE = "CISPR 15:2018 (from memory) and 47 CFR 18.307 (a), ";

    private NoiseRules() {}

    /** One verdict for each detector. A calculation is no proof of compliance. */
    public static List<RuleVerdict> verdicts(Solution solution) {
        ConductedNoise noise = solution.noise();
        return List.of(
                verdict("quasi-peak", NoiseMargin.quasiPeak(noise.frequency(), noise::atCrest), solution),
                verdict("average", NoiseMargin.average(noise.frequency(), noise::mean), solution));
    }

    private static RuleVerdict verdict(String detector, NoiseMargin margin, Solution solution) {
        boolean pass = margin.decibels() >= 0;
        return new RuleVerdict(SUBJECT, pass, RULE + detector, margin.text() + (pass ? "" : remedy(solution)));
    }

    private static String remedy(Solution solution) {
        double needed = NeededFilter.corner(solution.noise(), solution.driver());
        double corner = NeededFilter.corner(solution.driver());
        String has = "; the filter corner is " + kilohertz(corner);
        return has + (needed > 0 ? " and would have to be " + kilohertz(needed) : " and no choke would do");
    }

    /** One prefix for both corners, so that they compare at a glance. */
    private static String kilohertz(double frequency) {
        return PlainNumber.significant(1e-3 * frequency, 3) + " kHz";
    }
}
