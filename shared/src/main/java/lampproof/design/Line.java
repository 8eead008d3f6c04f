package lampproof.design;

/**
 * The mains as the lamp sees it.
 *
 * @param voltage rms voltage [V]
 * @param frequency line frequency [Hz]
 * @param resistance source resistance [Ohm]
 */
public record Line(double voltage, double frequency, double resistance) {

    /** Crest of the sinusoidal line voltage [V]. */
    public double crest() {
        return Math.sqrt(2) * voltage;
    }

    /** Angular frequency [rad/s]. */
    public double angularFrequency() {
        return 2 * Math.PI * frequency;
    }

    /** Length of one half cycle [s]. */
    public double halfPeriod() {
        return 0.5 / frequency;
    }

    /** The same mains at another rms voltage [V]. */
    public Line at(double otherVoltage) {
        return new Line(otherVoltage, frequency, resistance);
    }
}
