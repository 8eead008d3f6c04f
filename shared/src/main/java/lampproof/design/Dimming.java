package lampproof.design;

import lampproof.spec.Keyword;

/**
 * The wall dimmer, and the bleeder that supplies its timing circuit and holding current.
 *
 * @param edge which edge the dimmer cuts
 * @param conduction angle of each half cycle that it lets through [rad]
 * @param capacitance noise capacitor across the dimmer [F]
 * @param inductance its choke, in series with the triac [H]
 * @param holdingCurrent current below which its triac goes out [A]
 * @param bleederResistance resistor across the rectified line while that is below the threshold [Ohm]; infinite for none
 * @param threshold rectified line voltage above which the resistor lets go [V]
 * @param topUpCurrent current up to which the bleeder tops up what the lamp draws [A]
 */
public record Dimming(
        Edge edge,
        double conduction,
        double capacitance,
        double inductance,
        double holdingCurrent,
        double bleederResistance,
        double threshold,
        double topUpCurrent) {

    /** Neither dimmer nor bleeder. */
    public static final Dimming NONE = new Dimming(Edge.NONE, Math.PI, 0, 0, 0, Double.POSITIVE_INFINITY, 0, 0);

    /** Rectified voltage from which the bleeder can draw its full holding current [V]. */
    public static final double FULL_CURRENT_FROM = 10;

    /** How long the gate of the triac is driven [s]; until then it conducts whatever its current. */
    public static final double GATE_PULSE = 100e-6;

    private static final double END_OF_WATCH = Math.toRadians(150);
    private static final double LEAST_WATCH = 2e-6;

    /** Whether there is a dimmer. */
    public boolean present() {
        return edge != Edge.NONE;
    }

    /** The same dimmer, which lets through another angle of each half cycle [rad]. */
    public Dimming at(double otherConduction) {
        return new Dimming(
                edge,
                otherConduction,
                capacitance,
                inductance,
                holdingCurrent,
                bleederResistance,
                threshold,
                topUpCurrent);
    }

    /** The same dimmer before a lamp without bleeder. */
    public Dimming withoutBleeder() {
        return new Dimming(
                edge, conduction, capacitance, inductance, holdingCurrent, Double.POSITIVE_INFINITY, threshold, 0);
    }

    /** Resistance across the choke that represents its losses: a quality of one with the noise capacitor [Ohm]. */
    public double damping() {
        return Math.sqrt(inductance / capacitance);
    }

    /** Angle at which the dimmer begins to conduct [rad]. */
    public double firingAngle() {
        return edge == Edge.LEADING ? Math.PI - conduction : 0;
    }

    /** When the triac has to hold by itself, after the zero crossing of a line [s]. */
    public double watchFrom(Line line) {
        return Math.min(firingAngle() / line.angularFrequency() + GATE_PULSE, line.halfPeriod() - LEAST_WATCH);
    }

    /** Until when it matters that it holds: later the line is too low to be missed [s]. */
    public double watchUntil(Line line) {
        double cut = edge == Edge.LEADING ? Math.PI : conduction;
        double late = edge == Edge.LEADING ? END_OF_WATCH : 0;
        double until = Math.max(late, 0.5 * (firingAngle() + cut)) / line.angularFrequency();
        return Math.max(watchFrom(line) + LEAST_WATCH, until);
    }

    /**
     * Current of the bleeder [A].
     *
     * @param voltage rectified line voltage [V]
     * @param drawn current that the lamp draws by itself [A]
     */
    public double bleederCurrent(double voltage, double drawn) {
        return bleederCurrent(voltage, voltage, drawn);
    }

    /** The same with a voltage [V] at the bleeder that its diodes have left over. */
    public double bleederCurrent(double lineVoltage, double voltage, double drawn) {
        double resistor = lineVoltage < threshold ? voltage / bleederResistance : 0;
        double wanted = topUpCurrent * Math.min(1, voltage / FULL_CURRENT_FROM);
        return resistor + Math.max(0, wanted - drawn - resistor);
    }

    /** The edge of the half cycle that a dimmer cuts. */
    public enum Edge implements Keyword {
        /** No dimmer. */
        NONE,
        /** The beginning of the half cycle, by a triac. */
        LEADING,
        /** The end of the half cycle, by transistors. */
        TRAILING
    }
}
