package lampproof.design;

import lampproof.physics.SaturatingCore;

/**
 * The power inductor.
 *
 * @param inductance inductance below saturation [H]
 * @param resistance winding resistance [Ohm]
 * @param saturationCurrent current from which little of the inductance is left; infinite where the decks let no core
 *     saturate [A]
 * @param winding core and winding
 */
public record Inductor(double inductance, double resistance, double saturationCurrent, Winding winding) {

    /** Share of the inductance that is left in saturation; common practice, no source [-]. */
    public static final double LEFT = 0.1;

    /** The same with another inductance [H]. */
    public Inductor with(double other) {
        return new Inductor(other, resistance, saturationCurrent, winding);
    }

    /** Current [A] at a flux linkage over inductance [A]. */
    public double current(double flux) {
        return SaturatingCore.current(flux, saturationCurrent, LEFT);
    }

    /** Flux linkage over inductance [A] at a current [A]. */
    public double flux(double current) {
        return SaturatingCore.flux(current, saturationCurrent, LEFT);
    }
}
