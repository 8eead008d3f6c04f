package lampproof.physics;

/**
 * How long a capacitor carries a load of constant power.
 *
 * <p>{@code C = 2 P t / (V^2 - Vmin^2)}; {@code Vmin = sqrt(V^2 - 2 P t / C)}.
 *
 * <p>Valid while nothing recharges the capacitor. Neglects its series resistance.
 *
 * <p>Source: Fairchild AN-6086 rev. 1.0.4, 2010, sect. 4; Infineon DN 2013-01 rev. 1.1, 2016, eq. 30.
 */
public final class HoldUp {

    private HoldUp() {}

    /**
     * Capacitance that carries the load for a given time.
     *
     * @param power load power [W]
     * @param time time without recharge [s]
     * @param startVoltage voltage at the start [V]
     * @param endVoltage lowest voltage allowed, below the start [V]
     * @return capacitance [F]
     */
    public static double capacitance(double power, double time, double startVoltage, double endVoltage) {
        Require.notNegative("power [W]", power);
        Require.notNegative("time [s]", time);
        Require.notNegative("end voltage [V]", endVoltage);
        Require.below("end voltage [V]", endVoltage, "start voltage [V]", startVoltage);
        return 2 * power * time / (startVoltage * startVoltage - endVoltage * endVoltage);
    }

    /**
     * Voltage left after a given time.
     *
     * @param power load power [W]
     * @param time time without recharge [s]
     * @param startVoltage voltage at the start [V]
     * @param capacitance capacitance [F]
     * @return valley voltage [V]
     */
    public static double valley(double power, double time, double startVoltage, double capacitance) {
        Require.positive("capacitance [F]", capacitance);
        double spent = 2 * power * time / capacitance;
        Require.within("energy drawn over energy stored [-]", spent / (startVoltage * startVoltage), 0, 1);
        return Math.sqrt(startVoltage * startVoltage - spent);
    }
}
