package lampproof.deck;

import lampproof.prediction.DeckKind;

/**
 * A netlist, ready to run.
 *
 * @param kind what it shows
 * @param text the netlist
 */
public record Deck(DeckKind kind, String text) {

    /** Name of its file, without ending. */
    public String name() {
        return kind.word();
    }
}
