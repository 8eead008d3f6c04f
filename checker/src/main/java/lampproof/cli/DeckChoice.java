package lampproof.cli;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lampproof.design.Dimming.Edge;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.spec.Spec;
import picocli.CommandLine.Option;

/** The choice of the decks to write. */
final class DeckChoice {

    private static final String OPTION = "--decks";
    private static final String ALL = "all";

    @Option(
            names = OPTION,
            paramLabel = "DECK",
            split = ",",
            description = "The decks: all, or some of ${COMPLETION-CANDIDATES}. Default: crest,mains.",
            completionCandidates = DeckWord.class)
    private List<String> words = List.of();

    /** The predicted design of a spec for the chosen decks. */
    PredictedDesign predicted(Spec spec) {
        return PredictedDesign.of(spec, kinds(spec));
    }

    /**
     * The chosen decks of the lamp of a spec.
     *
     * @throws UserFault when a word does not name a deck
     */
    private Set<DeckKind> kinds(Spec spec) {
        if (words.isEmpty()) {
            return DeckKind.STANDARD;
        }
        if (words.contains(ALL)) {
            return all(spec);
        }
        Set<DeckKind> kinds = EnumSet.noneOf(DeckKind.class);
        words.forEach(word -> kinds.add(DeckWord.kind(word, OPTION)));
        return kinds;
    }

    /** Every deck that the lamp can have. */
    private static Set<DeckKind> all(Spec spec) {
        Set<DeckKind> kinds = EnumSet.allOf(DeckKind.class);
        if (spec.keyword("dimmer.edge", Edge.class).orElse(Edge.NONE) == Edge.NONE) {
            kinds.remove(DeckKind.DIMMED);
        }
        return kinds;
    }
}
