package lampproof.physics;

/**
 * Light of an LED over its life.
 *
 * <p>{@code flux = B exp(-alpha t)}; {@code L70 = ln(B / 0.7) / alpha}; between two tested temperatures alpha follows
 * the Arrhenius law and {@code B = sqrt(B1 B2)}.
 *
 * <p>Valid up to six times the test time for 20 or more samples, 5.5 times for 10 to 19.
 *
 * <p>Source: IES TM-21-11 and TM-21-21, from memory.
 *
 * @param initial light at the start of the fitted curve, B [-]
 * @param decayRate decay rate, alpha [1/s]
 */
public record LumenMaintenance(double initial, double decayRate) {

    /** Checks the parameters. */
    public LumenMaintenance {
        Require.between("initial light [-]", initial, 0.5, 1.5);
        Require.positive("decay rate [1/s]", decayRate);
    }

    /**
     * Curve at a temperature between two tested ones.
     *
     * @param cool curve at the lower temperature
     * @param coolTemperature lower temperature [K]
     * @param hot curve at the higher temperature, the faster
     * @param hotTemperature higher temperature [K]
     * @param temperature temperature in between [K]
     * @return the curve
     */
    public static LumenMaintenance between(
            LumenMaintenance cool,
            double coolTemperature,
            LumenMaintenance hot,
            double hotTemperature,
            double temperature) {
        Require.within("temperature [K]", temperature, coolTemperature, hotTemperature);
        ArrheniusLife inverse =
                ArrheniusLife.through(1 / cool.decayRate, coolTemperature, 1 / hot.decayRate, hotTemperature);
        return new LumenMaintenance(Math.sqrt(cool.initial * hot.initial), 1 / inverse.at(temperature));
    }

    /** Light over the initial light [-] after a time [s]. */
    public double at(double time) {
        Require.notNegative("time [s]", time);
        return initial * Math.exp(-decayRate * time);
    }

    /** Time until a share of the light is left, 0.7 for L70 [-]; in [s]. */
    public double lifeTo(double share) {
        Require.positive("share of the light [-]", share);
        Require.within("share of the light [-]", share, 0, initial);
        return Math.log(initial / share) / decayRate;
    }
}
