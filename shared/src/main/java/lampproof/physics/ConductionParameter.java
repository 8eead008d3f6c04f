package lampproof.physics;

/**
 * Measure of how strongly inductor and load keep a converter in continuous conduction.
 *
 * <p>{@code K = 2 L / (R Ts)}; conduction is continuous while K is above its critical value.
 *
 * <p>Valid for a resistive load; a string or any other load counts with its voltage over its current.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, ch. 5, table 5.2.
 */
public final class ConductionParameter {

    private ConductionParameter() {}

    /**
     * Conduction parameter of a converter.
     *
     * @param inductance inductance [H]
     * @param load load resistance, or output voltage over output current [Ohm]
     * @param period switching period [s]
     * @return conduction parameter K [-]
     */
    public static double of(double inductance, double load, double period) {
        Require.positive("inductance [H]", inductance);
        Require.positive("load [Ohm]", load);
        Require.positive("period [s]", period);
        return 2 * inductance / (load * period);
    }
}
