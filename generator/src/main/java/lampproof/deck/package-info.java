/**
 * Decks: netlists that an open circuit simulator runs, made from templates.
 *
 * <p>In: a solved driver and its predictions. Out: the text of a deck. Only plain numbers, words, truths and lists reach a
 * template, never an object, so a template can run no code. Not here: the circuit itself, which the templates hold.
 */
package lampproof.deck;
