package lampproof.page;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import lampproof.prediction.DeckKind;
import lampproof.prediction.loss.Loss;
import lampproof.prediction.loss.Loss.DeckLoss;
import lampproof.prediction.loss.LossPart;
import lampproof.unit.PlainNumber;

/**
 * The losses of a lamp part by part: of the whole lamp as predicted, and of the deck of a line cycle as predicted and as
 * simulated. The deck contains only some of the parts.
 */
final class LossSplit {

    /** A part with less than this share of the longest bar is not listed. */
    private static final double LEAST_SHARE = 5e-4;

    /** Reverse recovery of the diode, which only decks with a recovering diode contain. */
    private static final String REVERSE = "diode.loss.reverse";

    /** A column of the table and a bar: the loss of each part [W]. */
    private record Column(String name, Function<LossPart, OptionalDouble> losses) {

        /** A bar has no length below zero. */
        double drawn(LossPart part) {
            double loss = losses.apply(part).orElse(0);
            return Double.isFinite(loss) ? Math.max(0, loss) : 0;
        }

        double length() {
            return Arrays.stream(LossPart.values()).mapToDouble(this::drawn).sum();
        }

        OptionalDouble sum() {
            double[] known = Arrays.stream(LossPart.values())
                    .map(losses)
                    .filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble)
                    .toArray();
            return known.length == 0
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(Arrays.stream(known).sum());
        }
    }

    private final List<Column> columns;
    private final double most;
    private final List<LossPart> parts;

    private LossSplit(RunRecord run) {
        columns = List.of(
                new Column("whole lamp", part -> run.predicted(part.figure())),
                new Column("deck, predicted", part -> inDeck(part, figure -> run.predicted(DeckKind.MAINS, figure))),
                new Column("deck, simulated", part -> inDeck(part, figure -> run.simulated(DeckKind.MAINS, figure))));
        most = columns.stream().mapToDouble(Column::length).max().orElse(0);
        parts = Arrays.stream(LossPart.values())
                .filter(part -> columns.stream().anyMatch(column -> column.drawn(part) > LEAST_SHARE * most))
                .toList();
    }

    /** The split of a run; without bars where no loss is known. */
    static LossTable of(RunRecord run) {
        return new LossSplit(run).table();
    }

    /** What the deck contains of the loss of a part [W]; empty when that is nothing or is not known. */
    private static OptionalDouble inDeck(LossPart part, Function<String, OptionalDouble> values) {
        List<OptionalDouble> losses = Arrays.stream(Loss.values())
                .filter(loss -> loss.part() == part)
                .flatMap(loss -> loss.inDecks().stream())
                .map(loss -> difference(loss, values))
                .toList();
        if (losses.isEmpty() || losses.stream().anyMatch(OptionalDouble::isEmpty)) {
            return OptionalDouble.empty();
        }
        double reverse = part == LossPart.DIODE ? values.apply(REVERSE).orElse(0) : 0;
        return OptionalDouble.of(
                losses.stream().mapToDouble(OptionalDouble::getAsDouble).sum() + reverse);
    }

    private static OptionalDouble difference(DeckLoss loss, Function<String, OptionalDouble> values) {
        List<OptionalDouble> all = Stream.concat(Stream.of(loss.figure()), loss.less().stream())
                .map(values)
                .toList();
        if (all.stream().anyMatch(OptionalDouble::isEmpty)) {
            return OptionalDouble.empty();
        }
        double less =
                all.stream().skip(1).mapToDouble(OptionalDouble::getAsDouble).sum();
        return OptionalDouble.of(all.get(0).getAsDouble() - less);
    }

    private LossTable table() {
        ColumnText text = ColumnText.about(most, "W");
        return new LossTable(
                columns.stream().map(Column::name).toList(),
                columns.stream()
                        .filter(column -> column.length() > 0)
                        .map(this::bar)
                        .toList(),
                parts.stream().map(part -> row(part, text)).toList(),
                columns.stream().map(column -> text.column(column.sum())).toList(),
                text.scaledUnit());
    }

    private LossBar bar(Column column) {
        return LossBar.of(column.name(), parts, column::drawn, most);
    }

    private LossTable.Row row(LossPart part, ColumnText text) {
        return new LossTable.Row(
                LossBar.letter(part),
                part.label(),
                columns.stream()
                        .map(column -> text.column(column.losses().apply(part)))
                        .toList(),
                share(part));
    }

    /** Share of the whole lamp [%]. */
    private String share(LossPart part) {
        Column lamp = columns.get(0);
        OptionalDouble loss = lamp.losses().apply(part);
        boolean shared = loss.isPresent() && lamp.length() > 0;
        return shared ? PlainNumber.fixed(100 * loss.getAsDouble() / lamp.length(), 1) : "";
    }
}
