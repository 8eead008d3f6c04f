/**
 * Verdicts: compares each predicted figure with its simulated value, after a check of the simulation itself.
 *
 * <p>In: predictions, their driver, and the waveforms of a deck or of an instrument. Out: trust checks, one verdict per
 * figure, and the cause of each difference.
 *
 * <pre>{@code
 *   predictions, driver, Waveforms
 *        |
 *   DeckComparison .............. the record of a simulator; InstrumentComparison: that of an instrument
 *        |
 *   ProbeMeasurements ........... one pass over one window; each measurement is a PendingValue until the pass ends
 *        |-- Trust .............. -> TrustCheck: Settling, Resolution, energy balance
 *        |-- FigureTable ........ how each figure is measured; SpikeNote: the width of a peak
 *        |
 *   Verdict ..................... agrees, differs, no verdict, predicted only (Outcome)
 *        |  if a figure differs: one more pass
 *   DifferenceExplainer
 *        |-- ConditionTable ..... how each condition (on-time, bus voltage, ...) is measured -> Substitution
 *        |-- SolvedAlternatives . the prediction with measured conditions (interface Alternatives)
 *        |-- Explanation ........ the substitutions that close the gap
 *        |
 *   DeckVerdict ................. all verdicts of a deck
 *   RunVerdict .................. all decks of a run;  SettingVerdict: a run at one setting of a dimmer
 * }</pre>
 *
 * <p>Not here: the simulator, and the text of reports.
 */
package lampproof.compare;
