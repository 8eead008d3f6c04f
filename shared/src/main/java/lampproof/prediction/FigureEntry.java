package lampproof.prediction;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import lampproof.event.EventResult;
import lampproof.quasistatic.dimmed.DimmedStress;

/**
 * A figure and how its value follows from a solution, in each deck that settles it and without a deck.
 *
 * @param figure the figure
 * @param readings its values
 * @param unlessZero whether a value of zero is no value: the lamp has no such thing
 */
record FigureEntry(Figure figure, List<Reading> readings, boolean unlessZero) {

    /** The entry of a figure, whose definition, formula, source and values follow. */
    static FigureEntry figure(String name, String symbol, String unit, Grade grade) {
        return new FigureEntry(new Figure(name, symbol, unit, grade, "", "", ""), List.of(), false);
    }

    FigureEntry definition(String text) {
        return with(new Figure(
                figure.name(),
                figure.symbol(),
                figure.unit(),
                figure.grade(),
                text,
                figure.formula(),
                figure.source()));
    }

    FigureEntry formula(String text) {
        return with(new Figure(
                figure.name(),
                figure.symbol(),
                figure.unit(),
                figure.grade(),
                figure.definition(),
                text,
                figure.source()));
    }

    FigureEntry source(String text) {
        return with(new Figure(
                figure.name(),
                figure.symbol(),
                figure.unit(),
                figure.grade(),
                figure.definition(),
                figure.formula(),
                text));
    }

    private FigureEntry with(Figure other) {
        return new FigureEntry(other, readings, unlessZero);
    }

    FigureEntry mains(ToDoubleFunction<Solution> value) {
        return with(DeckKind.MAINS, value);
    }

    FigureEntry crest(ToDoubleFunction<Solution> value) {
        return with(DeckKind.CREST, value);
    }

    FigureEntry dimmed(ToDoubleFunction<DimmedStress> value) {
        return with(
                DeckKind.DIMMED,
                solution -> value.applyAsDouble(solution.dimmed().operation().stress()));
    }

    FigureEntry openString(ToDoubleFunction<EventResult> peak) {
        return event(DeckKind.OPEN_STRING, peak);
    }

    FigureEntry shortedString(ToDoubleFunction<EventResult> peak) {
        return event(DeckKind.SHORTED_STRING, peak);
    }

    FigureEntry surge(ToDoubleFunction<EventResult> peak) {
        return event(DeckKind.SURGE, peak);
    }

    FigureEntry powerUp(ToDoubleFunction<EventResult> peak) {
        return event(DeckKind.POWER_UP, peak);
    }

    private FigureEntry event(DeckKind deck, ToDoubleFunction<EventResult> peak) {
        return with(deck, solution -> peak.applyAsDouble(solution.event(deck)));
    }

    /** The value that no deck settles. */
    FigureEntry calculated(ToDoubleFunction<Solution> value) {
        return with(Optional.empty(), value);
    }

    /** The value over the half cycle with the most in it, of a lamp without a dimmer: the last one. */
    Optional<Reading> widest() {
        return readings.stream()
                .filter(reading -> reading.isOf(DeckKind.STANDARD))
                .reduce((first, second) -> second);
    }

    FigureEntry with(DeckKind deck, ToDoubleFunction<Solution> value) {
        return with(Optional.of(deck), value);
    }

    private FigureEntry with(Optional<DeckKind> deck, ToDoubleFunction<Solution> value) {
        return new FigureEntry(
                figure,
                Stream.concat(readings.stream(), Stream.of(new Reading(deck, value)))
                        .toList(),
                unlessZero);
    }

    /** The same, only of lamps in which it is not zero. */
    FigureEntry ifAny() {
        return new FigureEntry(figure, readings, true);
    }

    /** Whether a lamp in which it is so much has this figure. */
    boolean has(double value) {
        return !unlessZero || value != 0;
    }

    /**
     * How a value is read from a solution.
     *
     * @param deck the deck that settles it; empty when none can
     * @param value the value
     */
    record Reading(Optional<DeckKind> deck, ToDoubleFunction<Solution> value) {

        /** Whether one of some decks settles it, or none can. */
        boolean isOf(Set<DeckKind> decks) {
            return deck.isEmpty() || decks.contains(deck.get());
        }

        /** The span of time over which it is taken. */
        String span() {
            return deck.map(DeckKind::span).orElse("half cycle of the model");
        }
    }
}
