package lampproof.prediction;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every figure that lampproof knows, in the order of the power from the wall to the string. */
public final class FigureCatalogue {

    private static final List<FigureEntry> ENTRIES = Stream.of(
                    LineFigures.entries(),
                    BusFigures.entries(),
                    SupplyFigures.entries(),
                    InductorFigures.entries(),
                    SwitchFigures.entries(),
                    DiodeFigures.entries(),
                    TimingFigures.entries(),
                    StringFigures.entries(),
                    StressFigures.entries(),
                    LossFigures.entries(),
                    HeatFigures.entries(),
                    NoiseFigures.entries())
            .flatMap(List::stream)
            .toList();

    private FigureCatalogue() {}

    static List<FigureEntry> entries() {
        return ENTRIES;
    }

    /** The figures, in order. */
    public static List<Figure> figures() {
        return ENTRIES.stream().map(FigureEntry::figure).toList();
    }

    /** The window of a figure: the spans of the decks that settle it, or the half cycle of the model. */
    public static String window(Figure figure) {
        return ENTRIES.stream()
                .filter(entry -> entry.figure().equals(figure))
                .flatMap(entry -> entry.readings().stream())
                .map(FigureEntry.Reading::span)
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** The figures that at least one deck settles, in order. */
    public static List<Figure> settled() {
        return ENTRIES.stream()
                .filter(entry -> entry.readings().stream()
                        .anyMatch(reading -> reading.deck().isPresent()))
                .map(FigureEntry::figure)
                .toList();
    }
}
