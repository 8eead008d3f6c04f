package lampproof.physics;

/**
 * Resistivity of copper over temperature.
 *
 * <p>{@code rho = 1.724e-8 Ohm m (1 + 0.00393/K (T - 293.15 K))}.
 *
 * <p>Valid from -50 to 200 degC.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 10.3.2, which
 * prints 1.724e-6 Ohm cm at room temperature and 2.3e-6 at 100 degC; coefficient from memory.
 */
public final class CopperResistivity {

    /** Resistivity at 20 degC [Ohm m]. */
    public static final double AT_ROOM_TEMPERATURE = 1.724e-8;

    private static final double COEFFICIENT = 0.00393;
    private static final double ROOM_TEMPERATURE = 293.15;

    private CopperResistivity() {}

    /**
     * Resistivity at a temperature.
     *
     * @param temperature copper temperature, 223 to 473 [K]
     * @return resistivity [Ohm m]
     */
    public static double at(double temperature) {
        Require.within("copper temperature [K]", temperature, 223, 474);
        return AT_ROOM_TEMPERATURE * (1 + COEFFICIENT * (temperature - ROOM_TEMPERATURE));
    }
}
