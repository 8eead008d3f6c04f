/**
 * Sub-circuits of the user's own that take the place of a part.
 *
 * <p>In: the rows of a spec that name files, and the folder of the spec; the files may come from strangers. Out: the text of
 * each sub-circuit, fit to stand in a deck. Not here: the deck, and whether the part behaves as the spec says; that the
 * simulation shows.
 */
package lampproof.subcircuit;
