/**
 * Events: an open string, a shorted string and a surge on a running lamp, and power-up from zero charge.
 *
 * <p>The whole circuit is integrated in small steps of time: generator or mains, filter, bridge, bus, power stage, output,
 * string, and the control cell with its protection. Voltages follow the currents of the same step (semi-implicit Euler
 * rule); what would be stiff, a bridge between two capacitors or a wire across the output, is solved within the step.
 * The part laws are those of the decks; the integration is not the simulator's.
 *
 * <p>In: an {@link lampproof.quasistatic.Operation}, from whose crest the integration starts. Out: an
 * {@link lampproof.event.EventResult}. Not here: the names and tolerances of the peaks, which belong to
 * {@code prediction}, and how long the deck of an event runs.
 *
 * <p>Neglected: what diode and bridge recover, capacitance of the bridge, inductance of wires, and whatever
 * breaks: a part that is driven beyond its rating goes on as before.
 */
package lampproof.event;
