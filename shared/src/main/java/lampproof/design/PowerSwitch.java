package lampproof.design;

/**
 * The power switch.
 *
 * @param resistance on-resistance [Ohm]
 * @param capacitance linear capacitance at the switch node: switch, diode and winding together [F]
 */
public record PowerSwitch(double resistance, double capacitance) {

    /** What diode and winding usually add to the capacitance at the switch node [F]. */
    public static final double DIODE_AND_WINDING = 10e-12;
}
