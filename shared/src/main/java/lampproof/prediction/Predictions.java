package lampproof.prediction;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Predictions of every figure of the catalogue. */
public final class Predictions {

    /** Of the value without a dimmer [-]. */
    private static final double DIMMED_FLOOR = 0.005;

    private Predictions() {}

    /**
     * Every figure of a solved driver, in the order of the catalogue.
     *
     * @throws lampproof.fault.UserFault when a part becomes hotter than it is rated for
     */
    public static List<Prediction> of(Solution solution, Corner corner) {
        return of(solution, corner, DeckKind.STANDARD);
    }

    /**
     * Every figure of a solved driver that some decks settle, or that none does, in the order of the catalogue.
     *
     * @throws lampproof.fault.UserFault when a part becomes hotter than it is rated for
     */
    public static List<Prediction> of(Solution solution, Corner corner, Set<DeckKind> decks) {
        solution.temperatures().requireRated();
        return ofAny(solution, corner, decks);
    }

    /** The same, even for a driver in which a part becomes hotter than it is rated for. */
    public static List<Prediction> ofAny(Solution solution, Corner corner, Set<DeckKind> decks) {
        return FigureCatalogue.entries().stream()
                .flatMap(entry -> entry.readings().stream()
                        .filter(reading -> reading.deck() == null || decks.contains(reading.deck()))
                        .flatMap(reading -> prediction(entry, reading, reading.deck(), solution, corner)))
                .toList();
    }

    /**
     * Every figure at the typical line voltage, then at the least and the greatest one of the spec. Decks are made for the
     * typical line voltage only; elsewhere each figure has one row that no deck settles.
     */
    public static List<Prediction> atCorners(LineCorners corners, Set<DeckKind> decks) {
        return corners.solutions().entrySet().stream()
                .flatMap(corner -> corner.getKey() == Corner.NOMINAL
                        ? ofAny(corner.getValue(), Corner.NOMINAL, decks).stream()
                        : widest(corner.getValue(), corner.getKey()))
                .toList();
    }

    private static Stream<Prediction> widest(Solution solution, Corner corner) {
        return FigureCatalogue.entries().stream()
                .flatMap(entry ->
                        entry.widest().stream().flatMap(reading -> prediction(entry, reading, null, solution, corner)));
    }

    private static Stream<Prediction> prediction(
            FigureEntry entry, FigureEntry.Reading reading, DeckKind deck, Solution solution, Corner corner) {
        double value = reading.value().applyAsDouble(solution);
        return entry.has(value)
                ? Stream.of(new Prediction(entry.figure(), corner, deck, value, tolerance(entry, deck, solution)))
                : Stream.empty();
    }

    /** Behind a dimmer a lamp goes dark: a share of next to nothing would be a limit that no simulator reaches. */
    private static Tolerance tolerance(FigureEntry entry, DeckKind deck, Solution solution) {
        Tolerance usual = entry.figure().grade().tolerance();
        return deck == DeckKind.DIMMED
                ? entry.widest()
                        .map(full -> usual.widenedBy(
                                DIMMED_FLOOR * Math.abs(full.value().applyAsDouble(solution))))
                        .orElse(usual)
                : usual;
    }
}
