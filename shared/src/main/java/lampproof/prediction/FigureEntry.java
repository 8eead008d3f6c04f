package lampproof.prediction;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A figure and how its value follows from a solution, in each deck that settles it.
 *
 * @param figure the figure
 * @param values value by deck
 */
record FigureEntry(Figure figure, Map<DeckKind, ToDoubleFunction<Solution>> values) {

    static FigureEntry figure(String name, String symbol, String unit, Grade grade, String definition, String source) {
        return new FigureEntry(new Figure(name, symbol, unit, grade, definition, source), Map.of());
    }

    FigureEntry mains(ToDoubleFunction<Solution> value) {
        return with(DeckKind.MAINS, value);
    }

    FigureEntry crest(ToDoubleFunction<Solution> value) {
        return with(DeckKind.CREST, value);
    }

    private FigureEntry with(DeckKind deck, ToDoubleFunction<Solution> value) {
        Map<DeckKind, ToDoubleFunction<Solution>> more = new EnumMap<>(DeckKind.class);
        more.putAll(values);
        more.put(deck, value);
        return new FigureEntry(figure, more);
    }
}
