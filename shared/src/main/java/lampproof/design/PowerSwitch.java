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

    /**
     * Time constant of a capacitance at the switch node with the resistance that silicon, leads and board put in series with it;
     * common practice, no source [s]. A property of the part and not of a deck: how fast the node falls decides how much of a
     * recovered charge becomes heat in the diode. Without it the step of a simulator collapses when the switch closes.
     */
    private static final double NODE_TIME_CONSTANT = 0.2e-9;

    /** A switch of which the whole capacitance is its own. */
    public PowerSwitch(double resistance, double capacitance) {
        this(resistance, capacitance, 0);
    }

    /** Resistance in series with a capacitance at the switch node [F]; in [Ohm]. */
    public static double seriesResistance(double capacitance) {
        return NODE_TIME_CONSTANT / capacitance;
    }

    /** Time constant with which the node falls when the switch closes, a resistance [Ohm] in series with it; in [s]. */
    public double fallTime(double series) {
        return NODE_TIME_CONSTANT + capacitance * (resistance + series);
    }
}
