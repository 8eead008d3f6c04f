package lampproof.cli;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import picocli.CommandLine.Option;

/** Which decks are written. */
final class DeckChoice {

    private static final String OPTION = "--decks";
    private static final String ALL = "all";

    @Option(
            names = OPTION,
            paramLabel = "DECK",
            split = ",",
            description = "Which decks: all, or some of ${COMPLETION-CANDIDATES}. Otherwise crest,mains.",
            completionCandidates = DeckWord.class)
    private List<String> words = List.of();

    /**
     * The decks asked for.
     *
     * @throws UserFault when a word is no deck
     */
    Set<DeckKind> kinds() {
        if (words.isEmpty()) {
            return DeckKind.STANDARD;
        }
        if (words.contains(ALL)) {
            return EnumSet.allOf(DeckKind.class);
        }
        Set<DeckKind> kinds = EnumSet.noneOf(DeckKind.class);
        words.forEach(word -> kinds.add(DeckWord.kind(word, OPTION)));
        return kinds;
    }
}
