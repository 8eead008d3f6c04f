package lampproof.design;

/**
 * The whole driver, every value in SI units.
 *
 * @param topology where the string hangs
 * @param line the mains
 * @param filter filter between mains and bridge
 * @param bridge one diode of the bridge
 * @param busCapacitance capacitor behind the bridge [F]
 * @param inductor the power inductor
 * @param powerSwitch the power switch
 * @param diode the freewheel diode
 * @param senseResistance current-sense resistor under the switch [Ohm]
 * @param output the capacitor across the string
 * @param string the LED string
 * @param control the control cell
 * @param fittings what it has beyond the simulated circuit
 */
public record Driver(
        Topology topology,
        Line line,
        Filter filter,
        Rectifier bridge,
        double busCapacitance,
        Inductor inductor,
        PowerSwitch powerSwitch,
        Rectifier diode,
        double senseResistance,
        Output output,
        LedString string,
        Control control,
        Fittings fittings) {

    /** The same driver on another line. */
    public Driver on(Line other) {
        return changed(other, inductor, fittings);
    }

    /** The same driver with another filter. */
    public Driver with(Filter other) {
        return new Driver(
                topology,
                line,
                other,
                bridge,
                busCapacitance,
                inductor,
                powerSwitch,
                diode,
                senseResistance,
                output,
                string,
                control,
                fittings);
    }

    /** The same driver behind another dimmer. */
    public Driver behind(Dimming other) {
        return changed(line, inductor, fittings.with(other));
    }

    /** The same driver with another inductor. */
    public Driver with(Inductor other) {
        return changed(line, other, fittings);
    }

    private Driver changed(Line newLine, Inductor newInductor, Fittings newFittings) {
        return new Driver(
                topology,
                newLine,
                filter,
                bridge,
                busCapacitance,
                newInductor,
                powerSwitch,
                diode,
                senseResistance,
                output,
                string,
                control,
                newFittings);
    }
}
