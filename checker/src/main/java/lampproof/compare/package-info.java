/**
 * Verdicts: what a simulation says of each predicted figure, after the simulation itself has been judged.
 *
 * <p>In: predictions, the driver that they are for, and the waveform file of a deck. Out: trust checks and one verdict per
 * figure. Not here: running the simulator, and writing the verdicts down.
 */
package lampproof.compare;
