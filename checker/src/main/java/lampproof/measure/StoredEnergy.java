package lampproof.measure;

/** The energy held in a linear store [J]. */
public final class StoredEnergy {

    private StoredEnergy() {}

    /**
     * The energy in a capacitor [J].
     *
     * @param capacitance capacitance [F]
     * @param voltage voltage [V]
     */
    public static double ofCapacitor(double capacitance, double voltage) {
        return capacitance * voltage * voltage / 2;
    }

    /**
     * The energy in an inductor [J].
     *
     * @param inductance inductance [H]
     * @param current current [A]
     */
    public static double ofInductor(double inductance, double current) {
        return inductance * current * current / 2;
    }
}
