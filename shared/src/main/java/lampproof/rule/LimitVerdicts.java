package lampproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lampproof.design.Law;
import lampproof.design.Topology;
import lampproof.physics.DisplacementFactorFloor;
import lampproof.physics.FlickerLimit;
import lampproof.physics.LimitVerdict;
import lampproof.physics.SubharmonicStability;
import lampproof.prediction.LineCorners;
import lampproof.prediction.Solution;
import lampproof.quasistatic.AnglePoint;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/** The verdicts of rules on a solved driver: harmonics, displacement, flicker, and the stability of its control. */
public final class LimitVerdicts {

    private LimitVerdicts() {}

    /** One verdict for each rule that concerns the driver. A calculation is no proof of compliance. */
    public static List<RuleVerdict> of(LineCorners corners) {
        Solution solution = corners.nominal();
        List<RuleVerdict> verdicts = new ArrayList<>(HarmonicRules.verdicts(solution));
        verdicts.add(displacement(solution));
        double depth = solution.string().percentFlicker();
        double frequency = solution.rippleFrequency();
        verdicts.add(flicker(FlickerLimit.judgeLowRisk(frequency, depth), frequency));
        verdicts.add(flicker(FlickerLimit.judgeNoEffect(frequency, depth), frequency));
        if (solution.driver().control().law() == Law.PEAK_CURRENT) {
            verdicts.add(stability(corners));
        }
        return List.copyOf(verdicts);
    }

    private static RuleVerdict displacement(Solution solution) {
        double power = solution.line().power();
        LimitVerdict verdict =
                DisplacementFactorFloor.judge(power, solution.line().displacementFactor());
        String at = " at " + Engineering.digits(3).inAscii().text(power, "W");
        String number = verdict.limit() == 0
                ? "no limit" + at
                : PlainNumber.fixed(verdict.value(), 3) + ", at least " + PlainNumber.fixed(verdict.limit(), 1) + at;
        return new RuleVerdict("displacement factor", verdict.pass(), verdict.rule(), number);
    }

    private static RuleVerdict flicker(LimitVerdict verdict, double frequency) {
        String number = PlainNumber.percent(verdict.value(), 1) + ", at most " + PlainNumber.percent(verdict.limit(), 2)
                + " at " + PlainNumber.fixed(frequency, 0) + " Hz";
        return new RuleVerdict("percent flicker", verdict.pass(), verdict.rule(), number);
    }

    /** At the line voltage and angle at which a disturbance of the inductor current grows the most. */
    private static RuleVerdict stability(LineCorners corners) {
        double growth = corners.solutions().values().stream()
                .flatMapToDouble(solution -> continuous(solution).mapToDouble(point -> growth(solution, point)))
                .max()
                .orElse(0);
        boolean stable = growth < 1;
        String number = "a disturbance becomes " + PlainNumber.fixed(growth, 2) + " of itself, at most 1";
        String rule = "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, slopes of a period";
        return new RuleVerdict("subharmonic stability", stable, rule, stable ? number : number + cure(corners));
    }

    private static String cure(LineCorners corners) {
        double ramp = corners.solutions().values().stream()
                .flatMapToDouble(solution -> continuous(solution).mapToDouble(point -> leastRamp(solution, point)))
                .max()
                .orElseThrow();
        return "; a switching.slope above " + Engineering.rounded(ramp, "A/s") + " would do";
    }

    private static Stream<AnglePoint> continuous(Solution solution) {
        return solution.operation().points().stream()
                .filter(AnglePoint::continuous)
                .filter(point -> source(solution, point) > 0);
    }

    private static double growth(Solution solution, AnglePoint point) {
        return Math.abs(SubharmonicStability.growth(
                onSlope(solution, point),
                offSlope(solution, point),
                solution.driver().control().slope()));
    }

    private static double leastRamp(Solution solution, AnglePoint point) {
        return SubharmonicStability.leastRamp(onSlope(solution, point), offSlope(solution, point));
    }

    /** Rise of the inductor current while the switch conducts [A/s]. */
    private static double onSlope(Solution solution, AnglePoint point) {
        return source(solution, point) / solution.driver().inductor().inductance();
    }

    /** Fall of the inductor current while the diode conducts [A/s]. */
    private static double offSlope(Solution solution, AnglePoint point) {
        double whole = isStepUp(solution) ? point.outputVoltage() : point.busVoltage();
        return Math.max(0, whole - source(solution, point))
                / solution.driver().inductor().inductance();
    }

    /** What drives the inductor current up [V]; a reference is not reached where nothing does. */
    private static double source(Solution solution, AnglePoint point) {
        return isStepUp(solution) ? point.busVoltage() : point.busVoltage() - point.outputVoltage();
    }

    private static boolean isStepUp(Solution solution) {
        return solution.driver().topology() == Topology.STEP_UP;
    }
}
