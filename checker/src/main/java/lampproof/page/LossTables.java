package lampproof.page;

/**
 * The losses over the line cycle.
 *
 * @param lamp everything that is lost between line and string
 * @param deck what the deck of a line cycle holds of it
 */
record LossTables(LossTable lamp, LossTable deck) {

    static LossTables of(RunRecord run) {
        return new LossTables(
                LossSplit.ofTheLamp(run).table(), LossSplit.ofTheDeck(run).table());
    }
}
