/**
 * Runs the circuit simulator on a deck and decides whether the run is valid.
 *
 * <p>In: a deck that writes one table of its own, with its stop time and limits. Out: an outcome of one of four kinds
 * (completed, failed, not run, simulator missing) with a single reason; the table and the log beside the deck, moved there complete or not at all.
 *
 * <p>A run is completed only if all of these hold, whatever its exit status says: it ended by itself with status 0; the
 * table was written by this run; its last row is complete; its last time is the stop time; the log has no failing line.
 *
 * <p>Deliberately not here: the waveform inside the table, which the package {@code waveform} reads; the contents of a
 * deck, which the simulator executes, shell commands included: treat decks from unknown sources as programs.
 */
package lampproof.simulator;
