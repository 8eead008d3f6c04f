package lampproof.prediction;

import java.util.List;
import java.util.stream.Stream;

/** Predictions of every figure of the catalogue. */
public final class Predictions {

    private Predictions() {}

    /** Every figure of a solved driver, in the order of the catalogue. */
    public static List<Prediction> of(Solution solution, Corner corner) {
        return FigureCatalogue.entries().stream()
                .flatMap(entry -> of(entry, solution, corner))
                .toList();
    }

    private static Stream<Prediction> of(FigureEntry entry, Solution solution, Corner corner) {
        return entry.values().entrySet().stream()
                .map(value -> new Prediction(
                        entry.figure(),
                        corner,
                        value.getKey(),
                        value.getValue().applyAsDouble(solution),
                        entry.figure().grade().tolerance()));
    }
}
