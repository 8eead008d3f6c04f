package lampproof.design;

/**
 * Light and heat of the string.
 *
 * @param share share of the string power that leaves as light [-]
 * @param temperatureSlope change of the string voltage with temperature [V/K]
 * @param life life of the LEDs
 */
public record Light(double share, double temperatureSlope, LifePoints life) {

    /** Temperature of the junctions for which the string voltage is stated [degC]. */
    public static final double RATED_TEMPERATURE = 25;
}
