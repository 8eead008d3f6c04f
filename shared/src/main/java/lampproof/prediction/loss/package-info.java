/**
 * The loss of every part over the line half cycle, also the losses that no deck contains.
 *
 * <p>In: a steady state. Out: {@link lampproof.prediction.loss.Losses}. Not here: how hot the parts become.
 *
 * <p>The losses that the decks do not contain are computed from the currents and voltages of the decks' circuit: they do not change its operating point. Neglected: leakage, what a snubber adds to the
 * capacitance of the node, and the capacitance of the
 * node while it slows the rise of the voltage at turn-off, which makes the overlap loss a bound on the safe side.
 */
package lampproof.prediction.loss;
