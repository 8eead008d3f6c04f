/**
 * Events: what a running lamp does when its string opens, when its string is shorted, or when a surge strikes;
 * and what a dead lamp does when the line comes on.
 *
 * <p>The whole circuit is marched in small steps of time: generator or mains, filter, bridge, bus, power stage, output,
 * string, and the control cell with its protection. Voltages follow the currents of the same step (semi-implicit Euler
 * rule); what would be stiff, a bridge between two capacitors or a wire across the output, is solved within the step.
 * The part laws are those of the decks; the integration is not the simulator's.
 *
 * <p>In: an {@link lampproof.quasistatic.Operation}, from whose crest the march starts. Out: an
 * {@link lampproof.event.EventResult}. Not here: what the peaks are called and how far they may be off.
 *
 * <p>Neglected: what diode and bridge recover, capacitance of the bridge, inductance of wires, and whatever
 * breaks: a part that is driven beyond its rating goes on as before.
 */
package lampproof.event;
