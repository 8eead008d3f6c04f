package lampproof.dimming;

/**
 * Two neighbouring settings between which the lamp lights, or goes dark.
 *
 * @param before the last one of before, in the order of turning
 * @param after the first one of after
 */
public record DimmingThreshold(DimmingPoint before, DimmingPoint after) {}
