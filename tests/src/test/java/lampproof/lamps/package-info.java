/**
 * Random lamps: what the decks say of lamps that nobody chose.
 *
 * <p>In: seeds. Out: a row for each figure of each lamp, and a summary. Not here: any judgement of its own; prediction,
 * simulation and comparison are those of the program.
 */
package lampproof.lamps;
