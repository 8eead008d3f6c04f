package lampproof.physics;

/**
 * Energy of the output capacitance that a switch burns when it closes under voltage.
 *
 * <p>Constant capacitance {@code 0.5 C V^2}; depletion capacitance that falls as {@code 1 / sqrt v}, given at V:
 * {@code (2/3) C V^2}; {@code P = E fs}.
 *
 * <p>Valid for hard turn-on. Neglects what resonance gives back when the switch closes at a valley: put in the
 * voltage at that instant.
 *
 * <p>Source: power from a given energy: Infineon DN 2013-01 rev. 1.1, 2016; energies by integration of v C(v), as in
 * R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, ch. 4 (place from memory).
 */
public final class OutputCapacitanceLoss {

    private OutputCapacitanceLoss() {}

    /**
     * Energy of a constant, or energy-related, capacitance.
     *
     * @param capacitance capacitance [F]
     * @param voltage voltage at turn-on [V]
     * @return energy of one turn-on [J]
     */
    public static double linearEnergy(double capacitance, double voltage) {
        Require.notNegative("capacitance [F]", capacitance);
        Require.notNegative("voltage [V]", voltage);
        return 0.5 * capacitance * voltage * voltage;
    }

    /**
     * Energy of a depletion capacitance.
     *
     * @param capacitance small-signal capacitance at the voltage of turn-on [F]
     * @param voltage voltage at turn-on [V]
     * @return energy of one turn-on [J]
     */
    public static double depletionEnergy(double capacitance, double voltage) {
        return 4 * linearEnergy(capacitance, voltage) / 3;
    }

    /**
     * Loss of one turn-on in each period.
     *
     * @param energy energy of one turn-on [J]
     * @param frequency switching frequency [Hz]
     * @return loss [W]
     */
    public static double power(double energy, double frequency) {
        Require.notNegative("energy [J]", energy);
        Require.notNegative("frequency [Hz]", frequency);
        return energy * frequency;
    }
}
