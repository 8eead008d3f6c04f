package lampproof.quasistatic;

import lampproof.design.LedString;

/** How output capacitor and string respond to a current: exactly, for a current that is constant over a step. */
public final class OutputResponse {

    private final LedString string;
    private final double capacitance;
    private final double step;
    private final double timeConstant;
    private final double wholeDecay;
    private final double halfDecay;

    /**
     * The response of a string beside an output capacitor.
     *
     * @param string the string
     * @param capacitance output capacitor [F]
     * @param step length of a step [s]
     */
    public OutputResponse(LedString string, double capacitance, double step) {
        this.string = string;
        this.capacitance = capacitance;
        this.step = step;
        this.timeConstant = string.resistance() * capacitance;
        this.wholeDecay = decay(step);
        this.halfDecay = decay(0.5 * step);
    }

    /** Voltage half a step later [V]. */
    public double halfway(double voltage, double current) {
        return after(voltage, current, 0.5 * step, halfDecay);
    }

    /** Voltage a step later [V]. */
    public double next(double voltage, double current) {
        return after(voltage, current, step, wholeDecay);
    }

    /** Mean string current over the step that led from one voltage to another [A]: what the capacitor did not take. */
    public double stringCurrent(double from, double to, double current) {
        return Math.max(0, current - capacitance * (to - from) / step);
    }

    private double after(double voltage, double current, double time, double decay) {
        if (voltage < string.knee()) {
            return belowKnee(voltage, current, time);
        }
        double target = string.voltage(current);
        double reached = target + (voltage - target) * decay;
        return reached < string.knee() ? pastKnee(voltage, current, time) : reached;
    }

    /** A current that rings back empties the capacitor: the string goes dark at its knee, and the rest is a straight line. */
    private double pastKnee(double voltage, double current, double time) {
        double target = string.voltage(current);
        double lit = timeConstant * Math.log((voltage - target) / (string.knee() - target));
        return capacitance > 0 ? string.knee() + current * (time - lit) / capacitance : string.knee();
    }

    /** The string does not conduct: the capacitor charges in a straight line up to the knee, then relaxes. */
    private double belowKnee(double voltage, double current, double time) {
        if (capacitance == 0) {
            return string.voltage(Math.max(0, current));
        }
        double risen = voltage + current * time / capacitance;
        if (risen <= string.knee()) {
            return risen;
        }
        double left = (risen - string.knee()) * capacitance / current;
        double target = string.voltage(current);
        return target + (string.knee() - target) * decay(left);
    }

    /** What is left of a deviation after a time; an ideal string, or no capacitor, leaves nothing [-]. */
    private double decay(double time) {
        return timeConstant == 0 ? 0 : Math.exp(-time / timeConstant);
    }
}
