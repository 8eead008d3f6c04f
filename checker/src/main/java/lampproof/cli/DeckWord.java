package lampproof.cli;

import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;

/** The words for decks on the command line. */
final class DeckWord implements Iterable<String> {

    private static final List<String> ALL =
            Arrays.stream(DeckKind.values()).map(DeckKind::word).toList();

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
        if (ALL.contains(word)) {
            return DeckKind.of(word);
        }
        String next = NearestName.to(word, ALL)
                .map(near -> "did you mean " + near + "?")
                .orElse("");
        throw UserFault.badInput(new Finding("there is no such deck", option, word, String.join(", ", ALL), next));
    }
}
