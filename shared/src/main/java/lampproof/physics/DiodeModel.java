package lampproof.physics;

/**
 * A diode with series resistance, fitted through two points of its data sheet.
 *
 * <p>{@code V = n (k T / q) ln(1 + I / IS) + RS I}; through two points
 * {@code RS = (V2 - V1 - n (k T / q) ln(I2 / I1)) / (I2 - I1)},
 * {@code IS = I1 / (exp((V1 - RS I1) / (n k T / q)) - 1)}.
 *
 * <p>Valid for currents much larger than IS. One point alone cannot tell RS from IS.
 *
 * <p>Source: W. Shockley, The theory of p-n junctions in semiconductors and p-n junction transistors, Bell System
 * Technical Journal 28(3), 1949, with series resistance.
 *
 * @param saturationCurrent saturation current IS [A]
 * @param seriesResistance series resistance RS [Ohm]
 * @param emission emission coefficient n [-]
 * @param temperature junction temperature of the parameters [K]
 */
public record DiodeModel(double saturationCurrent, double seriesResistance, double emission, double temperature) {

    /** Checks the parameters. */
    public DiodeModel {
        Require.positive("saturation current [A]", saturationCurrent);
        Require.notNegative("series resistance [Ohm]", seriesResistance);
        Require.positive("emission coefficient [-]", emission);
        Require.positive("temperature [K]", temperature);
    }

    /**
     * The diode through two points.
     *
     * @param low the point of lower current
     * @param high the point of higher current
     * @param emission emission coefficient n; too large a one leaves no voltage for RS and is rejected [-]
     * @param temperature junction temperature of both points [K]
     * @return the diode
     */
    public static DiodeModel through(Point low, Point high, double emission, double temperature) {
        Require.positive("lower current [A]", low.current);
        Require.below("lower current [A]", low.current, "higher current [A]", high.current);
        double scale = emission * thermalVoltage(temperature);
        double resistance = (high.voltage - low.voltage - scale * Math.log(high.current / low.current))
                / (high.current - low.current);
        double saturation = low.current / Math.expm1((low.voltage - resistance * low.current) / scale);
        return new DiodeModel(saturation, resistance, emission, temperature);
    }

    /**
     * The diode of a given saturation current [A] through one point, at an emission coefficient [-] and temperature
     * [K].
     */
    public static DiodeModel through(Point point, double saturationCurrent, double emission, double temperature) {
        double junction = emission * thermalVoltage(temperature) * Math.log1p(point.current / saturationCurrent);
        return new DiodeModel(saturationCurrent, (point.voltage - junction) / point.current, emission, temperature);
    }

    /** Voltage of one diode [V] at a current [A]. */
    public double voltage(double current) {
        Require.notNegative("current [A]", current);
        return emission * thermalVoltage(temperature) * Math.log1p(current / saturationCurrent)
                + seriesResistance * current;
    }

    /** Slope of voltage over current [Ohm] at a current [A]. */
    public double dynamicResistance(double current) {
        Require.notNegative("current [A]", current);
        return emission * thermalVoltage(temperature) / (current + saturationCurrent) + seriesResistance;
    }

    private static double thermalVoltage(double temperature) {
        return PhysicalConstants.BOLTZMANN_ELECTRONVOLT * temperature;
    }

    /**
     * A point of the data sheet.
     *
     * @param voltage voltage [V]
     * @param current current [A]
     */
    public record Point(double voltage, double current) {}
}
