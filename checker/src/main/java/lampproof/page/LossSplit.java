package lampproof.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import lampproof.prediction.DeckKind;
import lampproof.prediction.loss.Loss;
import lampproof.prediction.loss.LossPart;
import lampproof.prediction.loss.Losses;
import lampproof.unit.PlainNumber;

/** A total loss, split into parts: a bar for each source of the values, all on one scale, and the numbers. */
final class LossSplit {

    /** A bar cannot show less than this share of the whole. */
    private static final double LEAST_SHARE = 5e-4;

    /** A part of the whole and the figures that it is the difference of. */
    private record Part(String name, String figure, List<String> less) {

        OptionalDouble value(Function<String, OptionalDouble> values) {
            OptionalDouble whole = values.apply(figure);
            List<OptionalDouble> others = less.stream().map(values).toList();
            boolean known = whole.isPresent() && others.stream().allMatch(OptionalDouble::isPresent);
            double rest = others.stream().mapToDouble(other -> other.orElse(0)).sum();
            return known ? OptionalDouble.of(whole.getAsDouble() - rest) : OptionalDouble.empty();
        }

        /** A bar has no length below zero. */
        double drawn(Function<String, OptionalDouble> values) {
            double value = value(values).orElse(0);
            return Double.isFinite(value) ? Math.max(0, value) : 0;
        }
    }

    private static final List<Part> OF_THE_LAMP = Arrays.stream(LossPart.values())
            .map(part -> new Part(part.label(), part.figure(), List.of()))
            .toList();

    private static final List<Part> OF_THE_DECK = Arrays.stream(Loss.values())
            .flatMap(loss -> loss.inDecks().stream())
            .map(loss -> new Part(loss.label(), loss.figure(), loss.less()))
            .toList();

    private final String total;
    private final List<Part> parts;
    private final Map<String, Function<String, OptionalDouble>> ways;
    private final double most;

    private LossSplit(String total, List<Part> parts, Map<String, Function<String, OptionalDouble>> ways) {
        this.total = total;
        this.ways = ways;
        most = ways.values().stream().mapToDouble(way -> sum(parts, way)).max().orElse(0);
        this.parts = parts.stream()
                .filter(part -> ways.values().stream().anyMatch(way -> part.drawn(way) > LEAST_SHARE * most))
                .toList();
    }

    /** Everything that is lost between line and string, as predicted. */
    static LossSplit ofTheLamp(RunRecord run) {
        return new LossSplit(Losses.TOTAL, OF_THE_LAMP, Map.of("predicted", run::predicted));
    }

    /** What the deck of a line cycle holds of it, predicted and simulated. */
    static LossSplit ofTheDeck(RunRecord run) {
        Map<String, Function<String, OptionalDouble>> ways = new LinkedHashMap<>();
        ways.put("predicted", figure -> run.predicted(DeckKind.MAINS, figure));
        ways.put("simulated", figure -> run.simulated(DeckKind.MAINS, figure));
        return new LossSplit(Losses.CIRCUIT, OF_THE_DECK, ways);
    }

    /** The split; without bars where the total is not known. */
    LossTable table() {
        ColumnText text = ColumnText.about(most, "W");
        return new LossTable(
                List.copyOf(ways.keySet()),
                bars(),
                parts.stream().map(part -> row(part, text)).toList(),
                ways.values().stream()
                        .map(way -> text.column(way.apply(total)))
                        .toList(),
                text.scaledUnit());
    }

    private static double sum(List<Part> parts, Function<String, OptionalDouble> way) {
        return parts.stream().mapToDouble(part -> part.drawn(way)).sum();
    }

    private List<LossBar> bars() {
        List<LossBar> bars = new ArrayList<>();
        ways.forEach((name, way) -> {
            if (sum(parts, way) > 0) {
                bars.add(LossBar.of(
                        name, parts.stream().map(part -> part.drawn(way)).toList(), most));
            }
        });
        return bars;
    }

    private LossTable.Row row(Part part, ColumnText text) {
        return new LossTable.Row(
                LossBar.letter(parts.indexOf(part)),
                part.name(),
                ways.values().stream().map(way -> text.column(part.value(way))).toList(),
                share(part, ways.get("predicted")));
    }

    private String share(Part part, Function<String, OptionalDouble> way) {
        OptionalDouble value = part.value(way);
        OptionalDouble whole = way.apply(total);
        boolean shared = value.isPresent() && whole.isPresent() && whole.getAsDouble() > 0;
        return shared ? PlainNumber.fixed(100 * value.getAsDouble() / whole.getAsDouble(), 1) : "";
    }
}
