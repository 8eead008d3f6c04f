package lampproof.design;

/**
 * The power inductor.
 *
 * @param inductance inductance [H]
 * @param resistance winding resistance [Ohm]
 */
public record Inductor(double inductance, double resistance) {}
