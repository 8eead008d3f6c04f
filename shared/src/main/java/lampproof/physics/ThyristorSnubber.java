package lampproof.physics;

/**
 * Snubber that keeps the rate of rise of voltage across a thyristor.
 *
 * <p>Behind an inductance {@code C = (0.564 VM / (dv/dt))^2 / (2 L)}, {@code R = 2 zeta sqrt(L / C)}; behind a
 * resistance {@code C = V / (R dv/dt)}.
 *
 * <p>Valid for a damping of about 0.65, where the factor 0.564 belongs.
 *
 * <p>Source: B. R. Gupta, V. Singhal, Power Electronics, ex. 2.37, p. 97; J. M. Jacob, Power Electronics: Principles
 * and Applications, ex. 8.4.
 */
public final class ThyristorSnubber {

    private ThyristorSnubber() {}

    /**
     * Capacitance behind an inductance.
     *
     * @param inductance line inductance [H]
     * @param linePeak crest of the line voltage [V]
     * @param slewRate rate of rise allowed [V/s]
     * @return capacitance [F]
     */
    public static double capacitance(double inductance, double linePeak, double slewRate) {
        Require.positive("inductance [H]", inductance);
        Require.positive("line peak [V]", linePeak);
        Require.positive("slew rate [V/s]", slewRate);
        return 1 / (2 * inductance) * Math.pow(0.564 * linePeak / slewRate, 2);
    }

    /**
     * Resistance that damps inductance and capacitance.
     *
     * @param damping damping ratio [-]
     * @param inductance line inductance [H]
     * @param capacitance snubber capacitance [F]
     * @return resistance [Ohm]
     */
    public static double resistance(double damping, double inductance, double capacitance) {
        Require.positive("damping [-]", damping);
        Require.positive("inductance [H]", inductance);
        Require.positive("capacitance [F]", capacitance);
        return 2 * damping * Math.sqrt(inductance / capacitance);
    }

    /**
     * Capacitance behind a resistance.
     *
     * @param voltage voltage step [V]
     * @param resistance load resistance [Ohm]
     * @param slewRate rate of rise allowed [V/s]
     * @return capacitance [F]
     */
    public static double capacitanceBehindResistance(double voltage, double resistance, double slewRate) {
        Require.positive("voltage [V]", voltage);
        Require.positive("resistance [Ohm]", resistance);
        Require.positive("slew rate [V/s]", slewRate);
        return voltage / (resistance * slewRate);
    }
}
