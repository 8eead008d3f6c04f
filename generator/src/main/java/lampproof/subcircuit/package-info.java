/**
 * Sub-circuits of the user that replace a part.
 *
 * <p>In: the rows of a spec that name files, and the folder of the spec; the files may come from unknown sources. Out:
 * the text of each sub-circuit, ready for a deck. Not here: the deck, and whether the part behaves as the spec says;
 * that the simulation shows.
 */
package lampproof.subcircuit;
