package lampproof.quasistatic;

import lampproof.design.LedString;

/** How output capacitor and string answer to a current: exactly, for a current that stays the same over a step. */
public final class OutputResponse {

    private final LedString string;
    private final double capacitance;
    private final double step;
    private final double wholeDecay;
    private final double halfDecay;

    public OutputResponse(LedString string, double capacitance, double step) {
        this.string = string;
        this.capacitance = capacitance;
        this.step = step;
        double timeConstant = string.resistance() * capacitance;
        this.wholeDecay = Math.exp(-step / timeConstant);
        this.halfDecay = Math.exp(-0.5 * step / timeConstant);
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
        return current - capacitance * (to - from) / step;
    }

    private double after(double voltage, double current, double time, double decay) {
        if (voltage < string.knee()) {
            return belowKnee(voltage, current, time);
        }
        double target = string.voltage(current);
        return target + (voltage - target) * decay;
    }

    /** The string does not conduct: the capacitor charges in a straight line up to the knee, then relaxes. */
    private double belowKnee(double voltage, double current, double time) {
        double risen = voltage + current * time / capacitance;
        if (risen <= string.knee()) {
            return risen;
        }
        double left = (risen - string.knee()) * capacitance / current;
        double target = string.voltage(current);
        return target + (string.knee() - target) * Math.exp(-left / (string.resistance() * capacitance));
    }
}
