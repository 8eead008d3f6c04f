package lampproof.physics;

/**
 * A bare copper wire of the American Wire Gauge.
 *
 * <p>{@code d = 0.127 mm 92^((36 - n) / 39)}.
 *
 * <p>Valid for gauges 0 to 50; enamel adds to the diameter.
 *
 * <p>Source: ASTM B258, from memory; agrees within 3 per cent with R. W. Erickson, D. Maksimović, Fundamentals of Power
 * Electronics, 3rd ed., 2020, app. B.6.
 *
 * @param number gauge number [-]
 */
public record WireGauge(int number) {

    private static final double GAUGE_36_DIAMETER = 0.127e-3;
    private static final int THICKEST = 0;
    private static final int THINNEST = 50;

    /** Checks the gauge number. */
    public WireGauge {
        Require.within("gauge number [-]", number, THICKEST, THINNEST);
    }

    /** The thinnest gauge. */
    public static WireGauge thinnest() {
        return new WireGauge(THINNEST);
    }

    /** The thickest gauge whose copper area does not pass the given one [m2]. */
    public static WireGauge thickestWithin(double area) {
        double diameter = Math.sqrt(4 * area / Math.PI);
        double exact = 36 - 39 * Math.log(diameter / GAUGE_36_DIAMETER) / Math.log(92);
        return new WireGauge((int) Math.max(THICKEST, Math.ceil(exact - 1e-9)));
    }

    /** Copper diameter [m]. */
    public double diameter() {
        return GAUGE_36_DIAMETER * Math.pow(92, (36 - number) / 39.0);
    }

    /** Copper area [m2]. */
    public double area() {
        return Math.PI / 4 * diameter() * diameter();
    }

    /** Direct-current resistance of a length of wire [Ohm/m] at a temperature [K]. */
    public double resistancePerLength(double temperature) {
        return CopperResistivity.at(temperature) / area();
    }
}
