/**
 * The dimming curve: a lamp while its dimmer is turned down from full to off, and up again.
 *
 * <p>In: the steady state of a driver without its dimmer. Out: a {@link lampproof.dimming.DimmingCurve}, one steady state behind
 * the dimmer for each {@value lampproof.dimming.DimmingCurve#STEP_DEGREES} degrees of conduction in either direction, what
 * they show together, and the lamp behind a dimmer that is off. Not here: how one steady state is found, which belongs to
 * {@code quasistatic.dimmed}; and the timing circuit of the dimmer, whose own drift and hysteresis come on top.
 */
package lampproof.dimming;
