package lampproof.physics;

/**
 * Heat that the turn-off of a diode costs, most of it in the switch that closes.
 *
 * <p>Recovery time {@code fs V I trr}; recovered charge added {@code fs V (Qrr + I trr)}; capacitive charge of a
 * Schottky diode {@code 0.5 V Qc fs}.
 *
 * <p>Valid in continuous conduction; boundary and discontinuous conduction turn the diode off at zero current.
 *
 * <p>Source: S. Franco, Design with Operational Amplifiers and Analog Integrated Circuits, 3rd ed., ex. 11.20;
 * Infineon DN 2013-01 rev. 1.1, 2016; with charge: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics,
 * 3rd ed., 2020, ch. 4 (from memory).
 */
public final class RecoveryLoss {

    private RecoveryLoss() {}

    /**
     * Loss with the recovery time alone.
     *
     * @param voltage reverse voltage [V]
     * @param current current before turn-off [A]
     * @param recoveryTime reverse recovery time [s]
     * @param frequency switching frequency [Hz]
     * @return loss [W]
     */
    public static double fromTime(double voltage, double current, double recoveryTime, double frequency) {
        return fromCharge(voltage, current, recoveryTime, 0, frequency);
    }

    /**
     * Loss with recovery time and recovered charge.
     *
     * @param voltage reverse voltage [V]
     * @param current current before turn-off [A]
     * @param recoveryTime reverse recovery time [s]
     * @param recoveredCharge recovered charge [C]
     * @param frequency switching frequency [Hz]
     * @return loss [W]
     */
    public static double fromCharge(
            double voltage, double current, double recoveryTime, double recoveredCharge, double frequency) {
        Require.notNegative("voltage [V]", voltage);
        Require.notNegative("current [A]", current);
        Require.notNegative("recovery time [s]", recoveryTime);
        Require.notNegative("recovered charge [C]", recoveredCharge);
        Require.notNegative("frequency [Hz]", frequency);
        return frequency * voltage * (recoveredCharge + current * recoveryTime);
    }

    /**
     * Loss of a diode that stores capacitive charge only.
     *
     * @param voltage reverse voltage [V]
     * @param charge capacitive charge at this voltage [C]
     * @param frequency switching frequency [Hz]
     * @return loss [W]
     */
    public static double capacitive(double voltage, double charge, double frequency) {
        Require.notNegative("voltage [V]", voltage);
        Require.notNegative("charge [C]", charge);
        Require.notNegative("frequency [Hz]", frequency);
        return 0.5 * voltage * charge * frequency;
    }
}
