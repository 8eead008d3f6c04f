package lampproof.design;

/**
 * The power switch.
 *
 * @param resistance on-resistance [Ohm]
 * @param capacitance linear capacitance at the switch node: switch, diode and winding together [F]
 * @param besides the share of diode and winding in it [F]
 */
public record PowerSwitch(double resistance, double capacitance, double besides) {

    /** What diode and winding usually add to the capacitance at the switch node [F]. */
    static final double DIODE_AND_WINDING = 10e-12;

    /** Time constant of the node capacitance in the decks with a resistor in series, which they need to be followed [s]. */
    public static final double NODE_TIME_CONSTANT = 0.2e-9;

    /** A switch of which the whole capacitance is its own. */
    public PowerSwitch(double resistance, double capacitance) {
        this(resistance, capacitance, 0);
    }

    /** Time constant with which the node falls when the switch closes, a resistance [Ohm] in series with it; in [s]. */
    public double fallTime(double series) {
        return NODE_TIME_CONSTANT + capacitance * (resistance + series);
    }
}
