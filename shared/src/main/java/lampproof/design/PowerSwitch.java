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

    /** A switch of which the whole capacitance is its own. */
    public PowerSwitch(double resistance, double capacitance) {
        this(resistance, capacitance, 0);
    }
}
