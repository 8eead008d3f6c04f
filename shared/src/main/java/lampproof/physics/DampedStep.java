package lampproof.physics;

/**
 * Response of a series circuit of resistance, inductance and capacitance to a voltage step.
 *
 * <p>{@code zeta = (R / 2) sqrt(C / L)}; overshoot {@code exp(-pi zeta / sqrt(1 - zeta^2))}; half period
 * {@code pi / sqrt(1 / (L C) - (R / (2 L))^2)}; undamped peak current {@code V sqrt(C / L)}.
 *
 * <p>Valid below critical damping and for a capacitor that is empty before the step.
 *
 * <p>Source: P. S. Bimbhra, Power Electronics, ex. 3.6.
 *
 * @param resistance series resistance [Ohm]
 * @param inductance inductance [H]
 * @param capacitance capacitance [F]
 */
public record DampedStep(double resistance, double inductance, double capacitance) {

    /** Checks the range of the formulas. */
    public DampedStep {
        Require.notNegative("resistance [Ohm]", resistance);
        Require.positive("inductance [H]", inductance);
        Require.positive("capacitance [F]", capacitance);
        Require.below("damping ratio [-]", resistance / 2 * Math.sqrt(capacitance / inductance), "critical damping", 1);
    }

    /** Circuit of a damping ratio below 1 [-], a natural frequency [rad/s] and an inductance [H]. */
    public static DampedStep ofDamping(double damping, double naturalFrequency, double inductance) {
        double resistance = 2 * damping * naturalFrequency * inductance;
        return new DampedStep(resistance, inductance, 1 / (naturalFrequency * naturalFrequency * inductance));
    }

    /** Damping ratio, below 1 [-]. */
    public double dampingRatio() {
        return resistance / 2 * Math.sqrt(capacitance / inductance);
    }

    /** Overshoot of the capacitor voltage over the step [-]. */
    public double overshoot() {
        double zeta = dampingRatio();
        return Math.exp(-Math.PI * zeta / Math.sqrt(1 - zeta * zeta));
    }

    /** Time until the current first comes back to zero [s]. */
    public double halfPeriod() {
        double decay = resistance / (2 * inductance);
        return Math.PI / Math.sqrt(1 / (inductance * capacitance) - decay * decay);
    }

    /** Frequency of the ringing [Hz]. */
    public double ringingFrequency() {
        return 1 / (2 * halfPeriod());
    }

    /** Peak current without damping [A] after a step [V]; an upper bound of the real one. */
    public double undampedPeak(double step) {
        return step * Math.sqrt(capacitance / inductance);
    }
}
