package lampproof.prediction;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Predictions of every figure of the catalogue. */
public final class Predictions {

    /** Of the value without a dimmer [-]. */
    private static final double DIMMED_FLOOR = 0.005;

    private static final Optional<DeckKind> DIMMED = Optional.of(DeckKind.DIMMED);

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
        List<Prediction> predictions = new ArrayList<>();
        for (FigureEntry entry : FigureCatalogue.entries()) {
            for (FigureEntry.Reading reading : entry.readings()) {
                if (reading.isOf(decks)) {
                    add(entry, reading, reading.deck(), solution, corner, predictions);
                }
            }
        }
        return Collections.unmodifiableList(predictions);
    }

    /**
     * Every figure at the typical line voltage, then at the least and the greatest one of the spec. Decks are made for the
     * typical line voltage only; elsewhere each figure has one row that no deck settles.
     */
    public static List<Prediction> atCorners(LineCorners corners, Set<DeckKind> decks) {
        List<Prediction> predictions = new ArrayList<>();
        corners.solutions().forEach((corner, solution) -> {
            if (corner == Corner.NOMINAL) {
                predictions.addAll(ofAny(solution, corner, decks));
            } else {
                addWidest(solution, corner, predictions);
            }
        });
        return Collections.unmodifiableList(predictions);
    }

    private static void addWidest(Solution solution, Corner corner, List<Prediction> predictions) {
        for (FigureEntry entry : FigureCatalogue.entries()) {
            entry.widest().ifPresent(reading -> add(entry, reading, Optional.empty(), solution, corner, predictions));
        }
    }

    private static void add(
            FigureEntry entry,
            FigureEntry.Reading reading,
            Optional<DeckKind> deck,
            Solution solution,
            Corner corner,
            List<Prediction> predictions) {
        double value = reading.value().applyAsDouble(solution);
        if (entry.has(value)) {
            predictions.add(new Prediction(entry.figure(), corner, deck, value, tolerance(entry, deck, solution)));
        }
    }

    /** Near zero light behind a dimmer a relative tolerance is finer than the simulator's accuracy. */
    private static Tolerance tolerance(FigureEntry entry, Optional<DeckKind> deck, Solution solution) {
        Tolerance usual = entry.figure().grade().tolerance();
        if (deck.isEmpty()) {
            return Tolerance.NONE;
        }
        return deck.equals(DIMMED)
                ? entry.widest()
                        .map(full -> usual.widenedBy(
                                DIMMED_FLOOR * Math.abs(full.value().applyAsDouble(solution))))
                        .orElse(usual)
                : usual;
    }
}
