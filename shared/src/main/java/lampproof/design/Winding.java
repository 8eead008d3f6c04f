package lampproof.design;

import lampproof.physics.CoreMaterial;
import lampproof.physics.MagneticCore;

/**
 * Core and winding of the power inductor.
 *
 * @param core shape of the core
 * @param material its ferrite
 * @param turns turns [-]
 * @param gap total air gap [m]
 * @param wireDiameter copper diameter of a strand [m]
 * @param strands strands in parallel [-]
 * @param layers layers of strands [-]
 * @param saturationCurrent current at which the core saturates [A]
 */
public record Winding(
        MagneticCore core,
        CoreMaterial material,
        double turns,
        double gap,
        double wireDiameter,
        double strands,
        int layers,
        double saturationCurrent) {

    /** Temperature at which copper is reckoned [K]. */
    public static final double TEMPERATURE = 373.15;

    /** Copper area of a turn [m2]. */
    public double copperArea() {
        return Math.PI / 4 * wireDiameter * wireDiameter * strands;
    }

    /** Flux density that a current [A] brings with an inductance [H]; in [T]. */
    public double flux(double inductance, double current) {
        return inductance * current / (turns * core.area());
    }
}
