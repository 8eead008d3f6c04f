package lampproof.choice;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import lampproof.design.Design;
import lampproof.design.Sizing;
import lampproof.fault.UserFault;
import lampproof.prediction.Solution;
import lampproof.spec.Amount;
import lampproof.spec.Quantity;
import lampproof.spec.Spec;
import lampproof.spec.SpecRow;
import lampproof.spec.Vocabulary;
import lampproof.unit.Dimension;
import lampproof.unit.PlainNumber;
import lampproof.unit.QuantityWriter;

/**
 * What moves a figure of a design when one row of its spec goes from least to most and all others stay.
 *
 * <p>A row without a range of its own goes ten per cent either way. The set-point is found anew each time, so that the
 * string keeps its current.
 *
 * @param row name of the row
 * @param least where the row begins [unit of its dimension]
 * @param most where it ends [unit of its dimension]
 * @param atLeast the figure at the beginning [unit of the figure]; absent when the driver does not work there
 * @param atMost the figure at the end [unit of the figure]; absent when the driver does not work there
 * @param typical the figure as designed [unit of the figure]
 */
public record Sensitivity(
        String row, double least, double most, OptionalDouble atLeast, OptionalDouble atMost, double typical) {

    private static final double USUAL = 0.1;

    /** A figure whose sensitivity is computed. */
    public enum Target {
        /** Efficiency [%]. */
        EFFICIENCY("efficiency", "%", Solution::efficiency),
        /** Greatest inductor current [A]. */
        PEAK_CURRENT(
                "inductor.current.peak",
                "A",
                solution -> solution.stage().inductor().peak()),
        /** Percent flicker [%]. */
        FLICKER(
                "string.flicker.percent",
                "%",
                solution -> 100 * solution.string().percentFlicker());

        private final String figure;
        private final String unit;
        private final ToDoubleFunction<Solution> value;

        Target(String figure, String unit, ToDoubleFunction<Solution> value) {
            this.figure = figure;
            this.unit = unit;
            this.value = value;
        }

        /** Name of the figure in the catalogue. */
        public String figure() {
            return figure;
        }

        /** Unit of the figure. */
        public String unit() {
            return unit;
        }
    }

    private record Varied(SpecRow row, Amount range, Optional<Solution> least, Optional<Solution> most) {

        Sensitivity of(Target target, Solution typical) {
            return new Sensitivity(
                    row.name(),
                    range.least(),
                    range.most(),
                    value(target, least),
                    value(target, most),
                    target.value.applyAsDouble(typical));
        }

        private static OptionalDouble value(Target target, Optional<Solution> solution) {
            return solution.stream().mapToDouble(target.value).findFirst();
        }
    }

    /** What moves each target of a candidate, the strongest first. */
    public static Map<Target, List<Sensitivity>> of(Candidate candidate) {
        List<Varied> varied = candidate.design().values().rows().stream()
                .filter(row ->
                        row.amount().filter(amount -> amount.typical() != 0).isPresent())
                .filter(row -> !row.name().startsWith("tolerance."))
                .toList()
                .parallelStream()
                .map(row -> varied(candidate, row))
                .toList();
        Map<Target, List<Sensitivity>> all = new EnumMap<>(Target.class);
        for (Target target : Target.values()) {
            all.put(target, sorted(varied, target, candidate.solution()));
        }
        return all;
    }

    private static List<Sensitivity> sorted(List<Varied> varied, Target target, Solution typical) {
        return varied.stream()
                .map(each -> each.of(target, typical))
                .filter(sensitivity -> sensitivity.span() > 0)
                .sorted(Comparator.comparingDouble(Sensitivity::span).reversed())
                .toList();
    }

    private static Varied varied(Candidate candidate, SpecRow row) {
        Amount range = range(candidate, row);
        return new Varied(row, range, solved(candidate, row, range.least()), solved(candidate, row, range.most()));
    }

    private static Amount range(Candidate candidate, SpecRow row) {
        Amount amount = candidate.spec().amount(row.name()).or(row::amount).orElseThrow();
        double typical = amount.typical();
        double usual = USUAL * Math.abs(typical);
        Quantity quantity = Vocabulary.quantity(row.name());
        double least = Math.max(quantity.least(), typical - usual);
        double most = Math.min(quantity.most(), typical + usual);
        return amount.isSingle() ? new Amount(Math.min(least, typical), typical, Math.max(most, typical)) : amount;
    }

    private static Optional<Solution> solved(Candidate candidate, SpecRow changed, double value) {
        List<SpecRow> rows = candidate.design().values().rows().stream()
                .map(row -> row.name().equals(changed.name())
                        ? SpecRow.filledIn(row.name(), Amount.of(value), "varied")
                        : row)
                .toList();
        try {
            Design design = Sizing.of(Spec.of(rows));
            return Optional.of(Solution.of(design.driver()));
        } catch (UserFault fault) {
            return Optional.empty();
        }
    }

    /** How far the figure moves [unit of the figure]. */
    public double span() {
        double low = Math.min(typical, Math.min(atLeast.orElse(typical), atMost.orElse(typical)));
        double high = Math.max(typical, Math.max(atLeast.orElse(typical), atMost.orElse(typical)));
        return high - low;
    }

    /** Change of the figure with the row [unit of the figure a unit of the row], over the whole range. */
    public OptionalDouble derivative() {
        return atLeast.isPresent() && atMost.isPresent()
                ? OptionalDouble.of((atMost.getAsDouble() - atLeast.getAsDouble()) / (most - least))
                : OptionalDouble.empty();
    }

    /** The sensitivity in words: from where to where the row goes, and what the figure then is. */
    public String text(Target target) {
        return row + " " + rangeText() + ": " + end(atLeast, target) + " to " + end(atMost, target);
    }

    /** From where to where the row goes. */
    public String rangeText() {
        Dimension dimension = Vocabulary.quantity(row).dimension();
        return QuantityWriter.rounded(dimension, least, 3) + " to " + QuantityWriter.rounded(dimension, most, 3);
    }

    private static String end(OptionalDouble value, Target target) {
        return value.isPresent()
                ? PlainNumber.significant(value.getAsDouble(), 4) + " " + target.unit()
                : "does not work";
    }
}
