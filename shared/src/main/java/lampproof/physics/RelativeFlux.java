package lampproof.physics;

/**
 * Light of an LED when its junction is warmer than in its data sheet.
 *
 * <p>{@code flux / flux ref = 1 - k (Tj - Tref)}.
 *
 * <p>Valid near the reference; white LEDs lose about 0.1 to 0.3 per cent per kelvin.
 *
 * <p>Source: straight line through data-sheet curves, range from memory.
 */
public final class RelativeFlux {

    private RelativeFlux() {}

    /**
     * Flux over that at the reference.
     *
     * @param junctionTemperature junction temperature [K]
     * @param referenceTemperature junction temperature of the data sheet [K]
     * @param lossPerKelvin share of the flux lost per kelvin, 0 to 0.01 [1/K]
     * @return flux ratio, not below 0 [-]
     */
    public static double at(double junctionTemperature, double referenceTemperature, double lossPerKelvin) {
        Require.positive("junction temperature [K]", junctionTemperature);
        Require.positive("reference temperature [K]", referenceTemperature);
        Require.within("flux loss [1/K]", lossPerKelvin, 0, 0.01);
        return Math.max(0, 1 - lossPerKelvin * (junctionTemperature - referenceTemperature));
    }
}
