package lampproof.rule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lampproof.physics.ClassCLimits;
import lampproof.physics.CurrentFlow;
import lampproof.physics.HarmonicAssessment;
import lampproof.physics.HarmonicSpectrum;
import lampproof.physics.HarmonicVerdict;
import lampproof.physics.LightingHarmonics;
import lampproof.physics.LineCurrentFigures;
import lampproof.physics.SmallLampLimits;
import lampproof.prediction.HarmonicName;
import lampproof.prediction.Solution;
import lampproof.quasistatic.AnglePoint;
import lampproof.unit.PlainNumber;

/** The line current of a solved driver against IEC 61000-3-2, with every alternative that the standard leaves. */
final class HarmonicRules {

    private static final String SUBJECT = "harmonics";
    private static final double LEAST_MAINS = 200;

    private HarmonicRules() {}

    static List<RuleJudgement> verdicts(Solution solution, SimulatedFigures simulated) {
        String scope = solution.driver().line().voltage() < LEAST_MAINS ? ", a rule of 220 V to 240 V mains" : "";
        List<RuleVerdict> predicted = verdicts(figures(solution), scope);
        List<RuleVerdict> shown = figures(simulated, predictedFlow(solution))
                .map(figures -> verdicts(figures, scope))
                .filter(verdicts -> verdicts.size() == predicted.size())
                .orElse(List.of());
        return IntStream.range(0, predicted.size())
                .mapToObj(k -> new RuleJudgement(
                        predicted.get(k), shown.stream().skip(k).findFirst()))
                .toList();
    }

    private static List<RuleVerdict> verdicts(LineCurrentFigures figures, String scope) {
        if (figures.power() < 5) {
            String rules = LightingHarmonics.assess(figures).rules();
            return List.of(new RuleVerdict(SUBJECT, true, rules, "", ""));
        }
        return figures.power() <= 25
                ? alternatives(figures, scope)
                : List.of(verdict(SUBJECT, ClassCLimits.assess(figures), scope, false));
    }

    /** First the alternative with the largest margin, which decides; then each of the three. */
    private static List<RuleVerdict> alternatives(LineCurrentFigures figures, String scope) {
        List<HarmonicAssessment> all = SmallLampLimits.alternatives(figures);
        HarmonicAssessment best = SmallLampLimits.assess(figures);
        List<RuleVerdict> verdicts = new ArrayList<>();
        verdicts.add(
                verdict(SUBJECT, best, scope, best.rules().equals(all.get(0).rules())));
        for (int k = 0; k < all.size(); k++) {
            RuleVerdict one = verdict(SUBJECT + ", alternative " + (k + 1), all.get(k), scope, k == 0);
            verdicts.add(best.pass() && !one.pass() ? one.notNeeded() : one);
        }
        return verdicts;
    }

    private static RuleVerdict verdict(String subject, HarmonicAssessment judged, String scope, boolean perWatt) {
        HarmonicVerdict deciding = judged.deciding().orElseThrow();
        return new RuleVerdict(
                subject, judged.pass(), deciding.rule() + scope, found(deciding, perWatt), limit(deciding, perWatt));
    }

    private static String found(HarmonicVerdict verdict, boolean perWatt) {
        String what = verdict.order() == 0 ? "line current" : "order " + verdict.order();
        return what + " " + amount(verdict.value(), verdict, perWatt);
    }

    private static String limit(HarmonicVerdict verdict, boolean perWatt) {
        boolean ceiling = (verdict.value() <= verdict.limit()) == verdict.pass();
        return (ceiling ? "at most " : "at least ") + amount(verdict.limit(), verdict, perWatt);
    }

    /** Limits on the whole current beyond 0.8 are angles; the greatest distortion allowed is 0.7. */
    private static String amount(double value, HarmonicVerdict verdict, boolean perWatt) {
        if (perWatt) {
            return PlainNumber.fixed(1e3 * value, 2) + " mA/W";
        }
        return verdict.order() == 0 && verdict.limit() > 0.8
                ? PlainNumber.fixed(Math.toDegrees(value), 0) + " deg"
                : PlainNumber.percent(value, 1);
    }

    private static LineCurrentFigures figures(Solution solution) {
        double voltage = solution.driver().line().voltage();
        return new LineCurrentFigures(
                solution.line().power(),
                Math.min(1, solution.line().powerFactor(voltage)),
                solution.line().spectrum(),
                predictedFlow(solution));
    }

    /**
     * What the mains deck shows. It does not show when the current begins and peaks, so the predicted flow decides the
     * second alternative, which a current that is symmetric about the crest fails in any case.
     */
    private static Optional<LineCurrentFigures> figures(SimulatedFigures simulated, CurrentFlow predicted) {
        OptionalDouble power = simulated.ofMains("line.power.mean");
        OptionalDouble factor = simulated.ofMains("line.power_factor");
        OptionalDouble rms = simulated.ofMains("line.current.rms");
        List<Double> shares = IntStream.iterate(3, order -> order <= HarmonicSpectrum.HIGHEST_ORDER, order -> order + 2)
                .mapToObj(order -> simulated.ofMains(HarmonicName.of(order)))
                .flatMap(share -> share.stream().boxed())
                .toList();
        boolean complete = shares.size() == (HarmonicSpectrum.HIGHEST_ORDER - 1) / 2;
        if (!complete || !isPositive(power) || !isPositive(factor) || !isPositive(rms)) {
            return Optional.empty();
        }
        double[] relative = shares.stream().mapToDouble(share -> 0.01 * share).toArray();
        double fundamental =
                rms.getAsDouble() / HarmonicSpectrum.ofOdd(1, relative).rms();
        double[] currents =
                Arrays.stream(relative).map(share -> share * fundamental).toArray();
        return Optional.of(new LineCurrentFigures(
                power.getAsDouble(),
                Math.min(1, factor.getAsDouble()),
                HarmonicSpectrum.ofOdd(fundamental, currents),
                predicted));
    }

    private static boolean isPositive(OptionalDouble value) {
        return value.isPresent() && value.getAsDouble() > 0;
    }

    private static CurrentFlow predictedFlow(Solution solution) {
        return CurrentFlow.ofSamples(samples(solution.operation().points()));
    }

    /** The current at the ends of the steps, from that in their middles. */
    private static double[] samples(List<AnglePoint> points) {
        double[] samples = new double[points.size() + 1];
        for (int k = 1; k < points.size(); k++) {
            samples[k] = 0.5 * (points.get(k - 1).lineCurrent() + points.get(k).lineCurrent());
        }
        samples[0] = points.get(0).lineCurrent();
        samples[points.size()] = points.get(points.size() - 1).lineCurrent();
        return samples;
    }
}
