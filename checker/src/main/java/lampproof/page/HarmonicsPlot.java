package lampproof.page;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import lampproof.page.Axis.Tick;
import lampproof.physics.HarmonicAssessment;
import lampproof.physics.HarmonicSpectrum;
import lampproof.physics.HarmonicVerdict;
import lampproof.prediction.DeckKind;
import lampproof.prediction.HarmonicName;
import lampproof.unit.PlainNumber;

/** The odd harmonics of the line current over the fundamental, on a logarithmic axis, with their limits. */
final class HarmonicsPlot {

    private static final int HIGHEST_ORDER = 39;
    private static final double LEAST = 0.1;
    private static final double[] TICKS = {0.1, 0.3, 1, 3, 10, 30, 100};
    private static final double TOP = 10;
    private static final double BOTTOM = 270;
    private static final double BAR = 11;

    private final RunRecord run;
    private final HarmonicAssessment assessment;
    private final Map<Integer, Double> limits = new HashMap<>();

    HarmonicsPlot(RunRecord run) {
        this.run = run;
        this.assessment = LineHarmonics.assess(run.solution());
        HarmonicSpectrum spectrum = run.solution().line().spectrum();
        for (HarmonicVerdict verdict : assessment.verdicts()) {
            if (verdict.order() > 0 && verdict.value() > 0) {
                // The limit may be in amperes per watt; over the value of the same unit it is a plain ratio.
                double limit = 100 * spectrum.relative(verdict.order()) * verdict.limit() / verdict.value();
                limits.put(verdict.order(), limit);
            }
        }
    }

    HarmonicsView view() {
        return new HarmonicsView(
                IntStream.iterate(3, order -> order <= HIGHEST_ORDER, order -> order + 2)
                        .mapToObj(this::order)
                        .toList(),
                BAR,
                Arrays.stream(TICKS).mapToObj(HarmonicsPlot::tick).toList(),
                !limits.isEmpty(),
                assessment.rules(),
                List.of(words("Predicted", this::predicted), words("Simulated", this::simulated)));
    }

    private static Tick tick(double percent) {
        return new Tick(at(percent), PlainNumber.fixed(percent, percent < 1 ? 1 : 0));
    }

    private HarmonicsView.Order order(int order) {
        double middle = Plot.LEFT + Plot.COLUMNS * (order - 2) / (double) (HIGHEST_ORDER - 1);
        Double limit = limits.get(order);
        return new HarmonicsView.Order(
                order,
                SvgPath.rounded(middle - BAR),
                SvgPath.rounded(middle),
                SvgPath.rounded(middle + BAR),
                top(predicted(order)),
                top(simulated(order)),
                limit == null ? OptionalDouble.empty() : OptionalDouble.of(at(limit)));
    }

    private OptionalDouble predicted(int order) {
        return run.predicted(DeckKind.MAINS, HarmonicName.of(order));
    }

    private OptionalDouble simulated(int order) {
        return run.simulated(DeckKind.MAINS, HarmonicName.of(order));
    }

    private static double top(OptionalDouble percent) {
        return percent.isPresent() ? at(percent.getAsDouble()) : BOTTOM;
    }

    /** Place of a share in per cent; a value off the axis is at its end. */
    private static double at(double percent) {
        double shown = Math.max(LEAST, Math.min(100, percent));
        return SvgPath.rounded(BOTTOM - (BOTTOM - TOP) * Math.log10(shown / LEAST) / Math.log10(100 / LEAST));
    }

    /** Whether the orders drawn keep their limits, in a sentence; empty when there is nothing to judge. */
    private String words(String who, IntFunction<OptionalDouble> values) {
        int worst = 0;
        double most = 0;
        for (int order : limits.keySet()) {
            OptionalDouble value = values.apply(order);
            if (value.isPresent() && value.getAsDouble() / limits.get(order) > most) {
                most = value.getAsDouble() / limits.get(order);
                worst = order;
            }
        }
        if (worst == 0) {
            return "";
        }
        return who + ": " + (most <= 1 ? "every order keeps its limit" : "NOT every order keeps its limit")
                + "; the nearest is order " + worst + " at " + PlainNumber.percent(most, 0) + " of it.";
    }
}
