package lampproof.design;

/**
 * What a driver has beyond the circuit that is simulated.
 *
 * @param winding core and winding of the inductor
 * @param edges what each switching edge costs
 * @param bias supply current of the controller, drawn from the bus [A]
 * @param outputResistance series resistance of the output capacitor [Ohm]
 * @param capacitors losses of the capacitors of filter and bus
 * @param dimming dimmer and bleeder
 * @param housing the housing and its parts
 * @param light what the string does besides taking power
 * @param capacitorLife life of the output capacitor
 * @param detail how finely its decks are simulated
 * @param exposure faults and surges, and what protects from them
 */
public record Fittings(
        Winding winding,
        Edges edges,
        double bias,
        double outputResistance,
        LossyCapacitors capacitors,
        Dimming dimming,
        Housing housing,
        Light light,
        LifePoints capacitorLife,
        Detail detail,
        Exposure exposure) {

    /**
     * The capacitors of filter and bus, as far as they become warm.
     *
     * @param dissipationFactor tangent of the loss angle of the filter capacitor at the line frequency [-]
     * @param busResistance series resistance of the bus capacitor [Ohm]
     */
    public record LossyCapacitors(double dissipationFactor, double busResistance) {}

    /** The same with another dimmer. */
    Fittings with(Dimming other) {
        return new Fittings(
                winding,
                edges,
                bias,
                outputResistance,
                capacitors,
                other,
                housing,
                light,
                capacitorLife,
                detail,
                exposure);
    }

    /**
     * Light and heat of the string.
     *
     * @param share share of the string power that leaves as light [-]
     * @param temperatureSlope change of the string voltage with temperature [V/K]
     * @param life life of the LEDs
     */
    public record Light(double share, double temperatureSlope, LifePoints life) {}
}
