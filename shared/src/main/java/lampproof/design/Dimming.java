package lampproof.design;

/**
 * The wall dimmer, and the load that keeps it alive.
 *
 * @param edge which edge the dimmer cuts
 * @param capacitance noise capacitor across the dimmer [F]
 * @param holdingCurrent current below which its triac goes out [A]
 * @param bleederResistance resistor across the rectified line while that is below the threshold [Ohm]; infinite for none
 * @param threshold rectified line voltage above which the resistor lets go [V]
 * @param topUpCurrent current up to which the bleeder tops up what the lamp draws [A]
 */
public record Dimming(
        Edge edge,
        double capacitance,
        double holdingCurrent,
        double bleederResistance,
        double threshold,
        double topUpCurrent) {

    /** Neither dimmer nor bleeder. */
    public static final Dimming NONE = new Dimming(Edge.NONE, 0, 0, Double.POSITIVE_INFINITY, 0, 0);

    /** The edge of the half cycle that a dimmer cuts. */
    public enum Edge {
        /** No dimmer. */
        NONE,
        /** The beginning of the half cycle, by a triac. */
        LEADING,
        /** The end of the half cycle, by transistors. */
        TRAILING
    }
}
