package lampproof.design;

/**
 * A junction diode: {@code v = n Vt ln(1 + i/Is) + Rs i}.
 *
 * @param saturationCurrent Is [A]
 * @param emission emission coefficient n [-], such as 1.8
 * @param resistance series resistance Rs [Ohm]
 * @param recoveryTime recovered charge over the current at a hard turn-off; 0 where decks and steady state leave it out [s]
 */
public record Rectifier(double saturationCurrent, double emission, double resistance, double recoveryTime) {

    /** Thermal voltage kT/q at 27 degC, the simulator's nominal temperature [V]. */
    private static final double THERMAL_VOLTAGE = 0.025865;

    /** A diode that stores no charge. */
    public Rectifier(double saturationCurrent, double emission, double resistance) {
        this(saturationCurrent, emission, resistance, 0);
    }

    /** What a diode drops that is meant to be ideal: less would stop simulators [V]. */
    private static final double IDEAL = 0.01;

    /** The current over the saturation current, which flows in reverse, of a diode worth the name; common practice, no source [-]. */
    private static final double LEAST_RATIO = 1e5;

    /**
     * The diode that drops a given voltage [V] at a given current [A], of which a resistance [Ohm] drops its part. An ideal one
     * drops 10 mV; the emission coefficient is smaller where the drop is too small for a diode that blocks.
     */
    public static Rectifier through(double drop, double current, double emission, double resistance) {
        double junction = Math.max(IDEAL, drop - resistance * current);
        double most = junction / (THERMAL_VOLTAGE * Math.log(LEAST_RATIO));
        return junction(junction, current, Math.min(emission, most), resistance);
    }

    private static Rectifier junction(double junction, double current, double emission, double resistance) {
        return new Rectifier(current / Math.expm1(junction / (emission * THERMAL_VOLTAGE)), emission, resistance);
    }

    /** The same that recovers softly. */
    Rectifier recovering(double time) {
        return new Rectifier(saturationCurrent, emission, resistance, time);
    }

    /** Junction voltage at a current [V]; right to far below a nanovolt, which spares the slower log1p. */
    public double junction(double current) {
        return emission * THERMAL_VOLTAGE * Math.log(1 + Math.max(0, current) / saturationCurrent);
    }

    /** Rise of the junction voltage for each factor e of current [V]. */
    public double slope() {
        return emission * THERMAL_VOLTAGE;
    }
}
