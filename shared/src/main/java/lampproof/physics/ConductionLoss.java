package lampproof.physics;

/**
 * Heat in a part that carries current.
 *
 * <p>Resistance {@code R Irms^2}; constant drop {@code V0 Iavg}; diode {@code V0 Iavg + Rd Irms^2}.
 *
 * <p>Valid for parameters taken at the temperature of the part.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 3.5; Infineon
 * DN 2013-01 rev. 1.1, 2016.
 */
public final class ConductionLoss {

    private ConductionLoss() {}

    /**
     * Loss of a resistance.
     *
     * @param rmsCurrent rms current [A]
     * @param resistance resistance [Ohm]
     * @return loss [W]
     */
    public static double resistive(double rmsCurrent, double resistance) {
        Require.notNegative("rms current [A]", rmsCurrent);
        Require.notNegative("resistance [Ohm]", resistance);
        return resistance * rmsCurrent * rmsCurrent;
    }

    /**
     * Loss of a diode with a constant drop and a slope resistance.
     *
     * @param meanCurrent mean current [A]
     * @param rmsCurrent rms current [A]
     * @param drop constant part of the voltage [V]
     * @param resistance slope resistance [Ohm]
     * @return loss [W]
     */
    public static double diode(double meanCurrent, double rmsCurrent, double drop, double resistance) {
        Require.notNegative("mean current [A]", meanCurrent);
        Require.notNegative("drop [V]", drop);
        return drop * meanCurrent + resistive(rmsCurrent, resistance);
    }
}
