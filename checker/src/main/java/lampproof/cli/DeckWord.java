package lampproof.cli;

import java.util.Iterator;
import java.util.List;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.spec.Keyword;

/** The words for decks on the command line. */
final class DeckWord implements Iterable<String> {

    private static final List<String> ALL = Keyword.words(DeckKind.class);

    @Override
    public Iterator<String> iterator() {
        return ALL.iterator();
    }

    /**
     * The deck that a word names.
     *
     * @param option the option that has the word
     * @throws UserFault when there is none
     */
    static DeckKind kind(String word, String option) {
        return Keyword.of(DeckKind.class, word)
                .orElseThrow(() -> UserFault.badInput(new Finding(
                        "unknown deck", option, word, String.join(", ", ALL), NearestName.question(word, ALL))));
    }
}
