package lampproof.design;

/**
 * What a driver has beyond the circuit that is simulated.
 *
 * @param winding core and winding of the inductor
 * @param edges what each switching edge costs
 * @param bias supply current of the controller, drawn from the bus [A]
 * @param outputResistance series resistance of the output capacitor [Ohm]
 * @param dimming dimmer and bleeder
 * @param housing the housing and its parts
 * @param light what the string does besides taking power
 * @param capacitorLife life of the output capacitor
 */
public record Fittings(
        Winding winding,
        Edges edges,
        double bias,
        double outputResistance,
        Dimming dimming,
        Housing housing,
        Light light,
        LifePoints capacitorLife) {

    /** The same with another dimmer. */
    Fittings with(Dimming other) {
        return new Fittings(winding, edges, bias, outputResistance, other, housing, light, capacitorLife);
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
