package lampproof.prediction;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lampproof.design.Law;
import lampproof.design.Topology;
import lampproof.physics.DisplacementFactorFloor;
import lampproof.physics.FlickerLimit;
import lampproof.physics.LimitVerdict;
import lampproof.physics.SubharmonicStability;
import lampproof.quasistatic.AnglePoint;

/** What the rules say of a solved driver: harmonics, displacement, conducted noise, flicker, and the stability of its control. */
public final class LimitVerdicts {

    private LimitVerdicts() {}

    /** One verdict for each rule that concerns the driver. A calculation is no proof of compliance. */
    public static List<RuleVerdict> of(Solution solution) {
        List<RuleVerdict> verdicts = new ArrayList<>(HarmonicRules.verdicts(solution));
        verdicts.add(displacement(solution));
        verdicts.addAll(NoiseRules.verdicts(solution));
        double depth = solution.string().percentFlicker();
        double frequency = solution.rippleFrequency();
        verdicts.add(flicker(FlickerLimit.judgeLowRisk(frequency, depth), frequency));
        verdicts.add(flicker(FlickerLimit.judgeNoEffect(frequency, depth), frequency));
        if (solution.driver().control().law() == Law.PEAK_CURRENT) {
            verdicts.add(stability(solution));
        }
        return List.copyOf(verdicts);
    }

    private static RuleVerdict displacement(Solution solution) {
        double power = solution.line().power();
        LimitVerdict verdict =
                DisplacementFactorFloor.judge(power, solution.line().displacementFactor());
        String number = verdict.limit() == 0
                ? String.format(Locale.ROOT, "no limit at %.3g W", power)
                : String.format(Locale.ROOT, "%.3f, at least %.1f at %.3g W", verdict.value(), verdict.limit(), power);
        return new RuleVerdict("displacement factor", verdict.pass(), verdict.rule(), number);
    }

    private static RuleVerdict flicker(LimitVerdict verdict, double frequency) {
        String number = String.format(
                Locale.ROOT,
                "%.1f %%, at most %.2f %% at %.0f Hz",
                100 * verdict.value(),
                100 * verdict.limit(),
                frequency);
        return new RuleVerdict("percent flicker", verdict.pass(), verdict.rule(), number);
    }

    /** The line angle at which a disturbance of the inductor current grows the most. */
    private static RuleVerdict stability(Solution solution) {
        double growth = solution.operation().points().stream()
                .filter(point -> point.cycle() != null && point.cycle().continuous())
                .filter(point -> source(solution, point) > 0)
                .mapToDouble(point -> Math.abs(growth(solution, point)))
                .max()
                .orElse(0);
        String number = String.format(Locale.ROOT, "a disturbance becomes %.2f of itself, at most 1", growth);
        String rule = "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, slopes of a period";
        return new RuleVerdict("subharmonic stability", growth < 1, rule, number);
    }

    private static double growth(Solution solution, AnglePoint point) {
        double inductance = solution.driver().inductor().inductance();
        double source = source(solution, point);
        double swing = isStepUp(solution) ? point.outputVoltage() : point.busVoltage();
        return SubharmonicStability.growth(
                source / inductance,
                Math.max(0, swing - source) / inductance,
                solution.driver().control().slope());
    }

    /** What drives the inductor current up [V]; a reference is not reached where nothing does. */
    private static double source(Solution solution, AnglePoint point) {
        return isStepUp(solution) ? point.busVoltage() : point.busVoltage() - point.outputVoltage();
    }

    private static boolean isStepUp(Solution solution) {
        return solution.driver().topology() == Topology.STEP_UP;
    }
}
