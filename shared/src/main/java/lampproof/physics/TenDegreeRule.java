package lampproof.physics;

/**
 * Life that doubles for every ten kelvin below the rated temperature.
 *
 * <p>{@code t = t0 2^((T0 - T) / 10 K)}.
 *
 * <p>Valid for electrolytic capacitors from about 40 degC to their rating, with the heat of their own ripple included
 * in the temperature; against 0.94 eV it differs by about two over 40 K.
 *
 * <p>Source: makers' application notes, from memory; common practice.
 */
public final class TenDegreeRule {

    private TenDegreeRule() {}

    /**
     * Life at a temperature.
     *
     * @param ratedLife life at the rated temperature [s]
     * @param ratedTemperature rated temperature [K]
     * @param temperature temperature, not above the rated one [K]
     * @return life [s]
     */
    public static double life(double ratedLife, double ratedTemperature, double temperature) {
        Require.positive("rated life [s]", ratedLife);
        Require.positive("temperature [K]", temperature);
        Require.within("temperature [K]", temperature, 0, ratedTemperature);
        return ratedLife * Math.pow(2, (ratedTemperature - temperature) / 10);
    }
}
