/**
 * Decks: netlists that an open circuit simulator runs, made from templates.
 *
 * <p>In: a solved driver and its predictions. Out: the text of a deck. A
 * template reads numbers, words, truths, lists and the components of records, so it can run no code. Not here: the circuit
 * itself, which the templates hold.
 */
package lampproof.deck;
