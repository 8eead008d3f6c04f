package lampproof.prediction;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import lampproof.design.Design;
import lampproof.design.Sizing;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.spec.Spec;

/**
 * Everything that follows from a spec before anything is simulated.
 *
 * @param design the driver and where its values came from
 * @param corners its periodic steady states at the line voltages of the spec
 * @param predictions what its figures should be at the typical, the least and the greatest line voltage
 * @param decks the decks that are to settle them
 */
public record PredictedDesign(Design design, LineCorners corners, List<Prediction> predictions, Set<DeckKind> decks) {

    /** Copies the predictions. */
    public PredictedDesign {
        predictions = List.copyOf(predictions);
        decks = Collections.unmodifiableSet(new TreeSet<>(decks));
    }

    /**
     * Sizes, solves and predicts.
     *
     * @throws lampproof.fault.UserFault when physics forbids what the spec asks for, or it tolerates an unknown figure
     */
    public static PredictedDesign of(Spec spec) {
        return of(spec, DeckKind.STANDARD);
    }

    /**
     * Sizes, solves, and predicts what some decks settle.
     *
     * @throws lampproof.fault.UserFault when physics forbids what the spec asks for, or it tolerates an unknown figure
     */
    public static PredictedDesign of(Spec spec, Set<DeckKind> decks) {
        Tolerances tolerances = new Tolerances(spec);
        Design design = Sizing.of(spec);
        requireDimmer(design, decks);
        LineCorners corners = LineCorners.of(design);
        List<Prediction> predictions = Predictions.atCorners(corners, decks).stream()
                .map(tolerances::applied)
                .toList();
        return new PredictedDesign(design, corners, predictions, decks);
    }

    /** The periodic steady state at the typical line voltage. */
    public Solution solution() {
        return corners.nominal();
    }

    private static void requireDimmer(Design design, Set<DeckKind> decks) {
        if (decks.contains(DeckKind.DIMMED) && !design.driver().dimming().present()) {
            throw UserFault.badInput(
                    Finding.of("the spec names no dimmer", "dimmer.edge", "give dimmer.edge as leading or trailing"));
        }
    }
}
