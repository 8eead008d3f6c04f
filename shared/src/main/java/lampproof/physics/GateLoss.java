package lampproof.physics;

/**
 * Power that charging and discharging a gate takes from its supply.
 *
 * <p>{@code P = Vg Qg fs}.
 *
 * <p>Valid for any gate resistor; the heat falls in the driver and its resistor, not in the switch.
 *
 * <p>Source: Infineon DN 2013-01 rev. 1.1, 2016, MOSFET section.
 */
public final class GateLoss {

    private GateLoss() {}

    /**
     * Gate power.
     *
     * @param driveVoltage gate voltage when on [V]
     * @param gateCharge total gate charge at this voltage [C]
     * @param frequency switching frequency [Hz]
     * @return loss [W]
     */
    public static double power(double driveVoltage, double gateCharge, double frequency) {
        Require.notNegative("drive voltage [V]", driveVoltage);
        Require.notNegative("gate charge [C]", gateCharge);
        Require.notNegative("frequency [Hz]", frequency);
        return driveVoltage * gateCharge * frequency;
    }
}
