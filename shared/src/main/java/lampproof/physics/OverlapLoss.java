package lampproof.physics;

/**
 * Heat in a switch while voltage and current overlap at an edge.
 *
 * <p>{@code P = 0.5 V I t fs} for one edge.
 *
 * <p>Valid when current and voltage change one after the other along straight lines. Neglects recovery and output
 * capacitance, which have classes of their own.
 *
 * <p>Source: Infineon DN 2013-01 rev. 1.1, 2016; S. Franco, Design with Operational Amplifiers and Analog Integrated
 * Circuits, 3rd ed., ex. 11.20.
 */
public final class OverlapLoss {

    private OverlapLoss() {}

    /**
     * Loss of one edge in each period.
     *
     * @param voltage voltage across the open switch [V]
     * @param current current at the edge [A]
     * @param time duration of the edge [s]
     * @param frequency switching frequency [Hz]
     * @return loss [W]
     */
    public static double power(double voltage, double current, double time, double frequency) {
        Require.notNegative("voltage [V]", voltage);
        Require.notNegative("current [A]", current);
        Require.notNegative("time [s]", time);
        Require.notNegative("frequency [Hz]", frequency);
        return 0.5 * voltage * current * time * frequency;
    }
}
