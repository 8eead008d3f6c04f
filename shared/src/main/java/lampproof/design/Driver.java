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
 * @param edges what each switching edge costs
 * @param capacitorLosses what makes the capacitors warm
 * @param supplyCurrent supply current of the controller, drawn from the bus [A]
 * @param dimming dimmer and bleeder
 * @param heat where the heat goes
 * @param exposure faults and surges, and what protects from them
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
        Edges edges,
        CapacitorLosses capacitorLosses,
        double supplyCurrent,
        Dimming dimming,
        Heat heat,
        Exposure exposure) {

    /** The same driver on another line. */
    public Driver on(Line other) {
        return changed(other, filter, inductor, dimming);
    }

    /** The same driver with another filter. */
    public Driver with(Filter other) {
        return changed(line, other, inductor, dimming);
    }

    /** The same driver with another inductor. */
    public Driver with(Inductor other) {
        return changed(line, filter, other, dimming);
    }

    /** The same driver behind another dimmer. */
    public Driver behind(Dimming other) {
        return changed(line, filter, inductor, other);
    }

    private Driver changed(Line newLine, Filter newFilter, Inductor newInductor, Dimming newDimming) {
        return new Driver(
                topology,
                newLine,
                newFilter,
                bridge,
                busCapacitance,
                newInductor,
                powerSwitch,
                diode,
                senseResistance,
                output,
                string,
                control,
                edges,
                capacitorLosses,
                supplyCurrent,
                newDimming,
                heat,
                exposure);
    }
}
