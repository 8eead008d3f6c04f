package lampproof.physics;

/**
 * Inrush when a leading-edge dimmer steps the line onto a capacitor through a damping resistor.
 *
 * <p>{@code Ipk = V / R}; {@code tau = R C}; heat of one step {@code 0.5 C V^2}, whatever the resistor; resistor for a
 * peak current beside a load RL: {@code R = V / (Imax - V / RL)}.
 *
 * <p>Valid for a capacitor that is empty before the step and a line without inductance, which gives the highest peak.
 *
 * <p>Source: energy balance of a charged capacitor; resistor: J. M. Jacob, Power Electronics: Principles and
 * Applications, ex. 8.5.
 *
 * @param step voltage step [V]
 * @param resistance damping resistance [Ohm]
 * @param capacitance capacitance behind it [F]
 */
public record DimmerInrush(double step, double resistance, double capacitance) {

    /** Checks the range of the formulas. */
    public DimmerInrush {
        Require.notNegative("voltage step [V]", step);
        Require.positive("resistance [Ohm]", resistance);
        Require.positive("capacitance [F]", capacitance);
    }

    /**
     * Least resistance that keeps the peak current of a switch.
     *
     * @param step voltage step [V]
     * @param peakCurrent peak current allowed in the switch [A]
     * @param load load resistance that the switch carries as well [Ohm]
     * @return damping resistance [Ohm]
     */
    public static double leastResistance(double step, double peakCurrent, double load) {
        Require.positive("load [Ohm]", load);
        Require.below("load current [A]", step / load, "peak current [A]", peakCurrent);
        return step / (peakCurrent - step / load);
    }

    /** Peak current [A]. */
    public double peakCurrent() {
        return step / resistance;
    }

    /** Time constant of the current [s]. */
    public double timeConstant() {
        return resistance * capacitance;
    }

    /** Heat of the resistor in one step [J]. */
    public double energy() {
        return 0.5 * capacitance * step * step;
    }

    /** Mean heat of the resistor [W] at a rate of steps, twice the line frequency [Hz]. */
    public double power(double stepsPerSecond) {
        Require.notNegative("steps per second [Hz]", stepsPerSecond);
        return energy() * stepsPerSecond;
    }
}
