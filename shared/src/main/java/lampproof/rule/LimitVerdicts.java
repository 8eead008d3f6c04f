package lampproof.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
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
import lampproof.quasistatic.LineStress;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/** The verdicts of rules on a solved driver: harmonics, displacement, flicker, and the stability of its control. */
public final class LimitVerdicts {

    private LimitVerdicts() {}

    /** One verdict for each rule that concerns the driver, on the prediction alone. */
    public static List<RuleVerdict> of(LineCorners corners) {
        return RuleJudgement.decisive(of(corners, SimulatedFigures.NONE));
    }

    /** One verdict for each rule that concerns the driver. A calculation is no proof of compliance. */
    static List<RuleJudgement> of(LineCorners corners, SimulatedFigures simulated) {
        Solution solution = corners.nominal();
        List<RuleJudgement> verdicts = new ArrayList<>(HarmonicRules.verdicts(solution, simulated));
        verdicts.add(displacement(solution, simulated));
        verdicts.add(flicker(FlickerLimit::judgeLowRisk, solution, simulated));
        verdicts.add(flicker(FlickerLimit::judgeNoEffect, solution, simulated));
        if (solution.driver().control().law() == Law.PEAK_CURRENT) {
            verdicts.add(RuleJudgement.predicted(stability(corners)));
        }
        return List.copyOf(verdicts);
    }

    private static RuleJudgement displacement(Solution solution, SimulatedFigures simulated) {
        LineStress line = solution.line();
        OptionalDouble power = simulated.ofMains("line.power.mean");
        OptionalDouble factor = simulated.ofMains("line.displacement_factor");
        return new RuleJudgement(
                displacement(line.power(), line.displacementFactor()),
                power.isPresent() && factor.isPresent()
                        ? Optional.of(displacement(power.getAsDouble(), factor.getAsDouble()))
                        : Optional.empty());
    }

    private static RuleVerdict displacement(double power, double factor) {
        LimitVerdict verdict = DisplacementFactorFloor.judge(power, factor);
        String at = " at " + Engineering.digits(3).inAscii().text(power, "W");
        return verdict.limit() == 0
                ? new RuleVerdict("displacement factor", verdict.pass(), verdict.rule(), "no limit" + at, "")
                : new RuleVerdict(
                        "displacement factor",
                        verdict.pass(),
                        verdict.rule(),
                        PlainNumber.fixed(verdict.value(), 3),
                        "at least " + PlainNumber.fixed(verdict.limit(), 1) + at);
    }

    private static RuleJudgement flicker(
            BiFunction<Double, Double, LimitVerdict> rule, Solution solution, SimulatedFigures simulated) {
        double frequency = solution.rippleFrequency();
        OptionalDouble depth = simulated.ofMains("string.flicker.percent");
        return new RuleJudgement(
                flicker(rule.apply(frequency, solution.string().percentFlicker()), frequency),
                depth.isPresent()
                        ? Optional.of(flicker(rule.apply(frequency, 0.01 * depth.getAsDouble()), frequency))
                        : Optional.empty());
    }

    private static RuleVerdict flicker(LimitVerdict verdict, double frequency) {
        return new RuleVerdict(
                "percent flicker",
                verdict.pass(),
                verdict.rule(),
                PlainNumber.percent(verdict.value(), 1),
                "at most " + PlainNumber.percent(verdict.limit(), 2) + " at " + PlainNumber.fixed(frequency, 0)
                        + " Hz");
    }

    /** At the line voltage and angle at which a disturbance of the inductor current grows the most. */
    private static RuleVerdict stability(LineCorners corners) {
        double growth = corners.solutions().values().stream()
                .flatMapToDouble(solution -> continuous(solution).mapToDouble(point -> growth(solution, point)))
                .max()
                .orElse(0);
        boolean stable = growth < 1;
        String found = "a disturbance becomes " + PlainNumber.fixed(growth, 2) + " of itself";
        String rule = "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, slopes of a period";
        RuleVerdict verdict = new RuleVerdict("subharmonic stability", stable, rule, found, "at most 1");
        return stable ? verdict : verdict.remediedBy(cure(corners));
    }

    private static String cure(LineCorners corners) {
        double ramp = corners.solutions().values().stream()
                .flatMapToDouble(solution -> continuous(solution).mapToDouble(point -> leastRamp(solution, point)))
                .max()
                .orElseThrow();
        return "give switching.slope above " + Engineering.rounded(ramp, "A/s");
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
