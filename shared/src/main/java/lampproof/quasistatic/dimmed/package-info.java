/**
 * The quasi-static model behind a phase-cut dimmer: the periodic steady state of a driver whose bus moves fast.
 *
 * <p>Dimmer, filter, bleeder, bridge and bus ring when the dimmer fires, and are stepped through the half cycle. The
 * converter stays averaged over switching cycles. Half cycles run until they repeat.
 *
 * <p>In: the steady state of a driver without its dimmer ({@link lampproof.quasistatic.Operation}). Out: a
 * {@link lampproof.quasistatic.dimmed.DimmedOperation}. Not here: the dimming curve over many conduction angles, which
 * belongs to {@link lampproof.dimming}, and the switching cycle itself, which belongs to {@link lampproof.quasistatic}.
 *
 * <p>Neglected: the switching cycle in which a firing finds the converter, and what the bridge diodes store.
 */
package lampproof.quasistatic.dimmed;
