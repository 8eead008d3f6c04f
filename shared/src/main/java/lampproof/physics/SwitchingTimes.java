package lampproof.physics;

/**
 * Duration of the edges of a field-effect transistor that is driven through a resistor.
 *
 * <p>{@code ton = Ciss Rg ln((Vg - Vth) / (Vg - Vpl)) + Crss Rg (Vds - Vpl) / (Vg - Vpl)};
 * {@code toff = Crss Rg (Vds - Vpl) / Vpl + Ciss Rg ln(Vpl / Vth)}.
 *
 * <p>Valid for constant capacitances and a gate resistor that holds the plateau. Neglects source inductance and the
 * current that the drain takes from the output capacitance.
 *
 * <p>Source: Infineon DN 2013-01 rev. 1.1, 2016, MOSFET section.
 *
 * @param inputCapacitance input capacitance Ciss [F]
 * @param reverseCapacitance reverse transfer capacitance Crss [F]
 * @param gateResistance gate resistance, driver included [Ohm]
 * @param driveVoltage gate voltage when on [V]
 * @param thresholdVoltage gate threshold [V]
 * @param plateauVoltage plateau at the switched current, above the threshold and below the drive voltage [V]
 */
public record SwitchingTimes(
        double inputCapacitance,
        double reverseCapacitance,
        double gateResistance,
        double driveVoltage,
        double thresholdVoltage,
        double plateauVoltage) {

    /** Checks the range of the formulas. */
    public SwitchingTimes {
        Require.positive("input capacitance [F]", inputCapacitance);
        Require.notNegative("reverse capacitance [F]", reverseCapacitance);
        Require.notNegative("gate resistance [Ohm]", gateResistance);
        Require.positive("threshold voltage [V]", thresholdVoltage);
        Require.between("plateau voltage [V]", plateauVoltage, thresholdVoltage, driveVoltage);
    }

    /** Turn-on time [s] at a voltage of the open switch, above the plateau [V]. */
    public double turnOn(double drainVoltage) {
        Require.below("plateau voltage [V]", plateauVoltage, "drain voltage [V]", drainVoltage);
        double drive = driveVoltage - plateauVoltage;
        return inputCapacitance * gateResistance * Math.log((driveVoltage - thresholdVoltage) / drive)
                + reverseCapacitance * gateResistance * (drainVoltage - plateauVoltage) / drive;
    }

    /** Turn-off time [s] at a voltage of the open switch, above the plateau [V]. */
    public double turnOff(double drainVoltage) {
        Require.below("plateau voltage [V]", plateauVoltage, "drain voltage [V]", drainVoltage);
        return reverseCapacitance * gateResistance * (drainVoltage - plateauVoltage) / plateauVoltage
                + inputCapacitance * gateResistance * Math.log(plateauVoltage / thresholdVoltage);
    }
}
