package lampproof.physics;

/**
 * Alternating over direct-current resistance of a winding of several layers.
 *
 * <p>{@code FR = phi (G1 + (2/3) (M^2 - 1) (G1 - 2 G2))};
 * {@code G1 = (sinh 2phi + sin 2phi) / (cosh 2phi - cos 2phi)};
 * {@code G2 = (sinh phi cos phi + cosh phi sin phi) / (cosh 2phi - cos 2phi)}; round wire
 * {@code phi = sqrt(eta) sqrt(pi/4) d / delta}; layer m of thick foil against the first {@code m^2 + (m-1)^2}.
 *
 * <p>Valid for layers that fill the width of the window and for a sinusoidal current. Neglects fringing at a gap and
 * the ends of the layers.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 10.4, eq.
 * (10.65)-(10.69), (10.84)-(10.88); G1 and G2 after P. L. Dowell, Effects of eddy currents in transformer windings,
 * Proc. IEE 113(8), 1966 (from memory; they reproduce the printed limits).
 */
public final class DowellResistance {

    /** Beyond this thickness the hyperbolic terms overflow nothing but add nothing: G1 is 1 and G2 is 0. */
    private static final double THICK = 100;

    private DowellResistance() {}

    /**
     * Resistance ratio of a winding.
     *
     * @param thickness layer thickness over skin depth, phi [-]
     * @param layers number of layers [-]
     * @return alternating over direct-current resistance [-]
     */
    public static double ratio(double thickness, int layers) {
        Require.positive("thickness over skin depth [-]", thickness);
        Require.within("layers [-]", layers, 1, 1000);
        double phi = Math.min(thickness, THICK);
        double common = Math.cosh(2 * phi) - Math.cos(2 * phi);
        double g1 = (Math.sinh(2 * phi) + Math.sin(2 * phi)) / common;
        double g2 = (Math.sinh(phi) * Math.cos(phi) + Math.cosh(phi) * Math.sin(phi)) / common;
        double square = (double) layers * layers;
        return thickness * (g1 + 2.0 / 3 * (square - 1) * (g1 - 2 * g2));
    }

    /**
     * Loss of one layer of thick foil over the loss of the first layer.
     *
     * @param layer number of the layer, counted from the side without field [-]
     * @return loss ratio [-]
     */
    public static double thickFoilLayer(int layer) {
        Require.within("layer [-]", layer, 1, 1000);
        return (double) layer * layer + (layer - 1.0) * (layer - 1.0);
    }

    /**
     * Thickness over skin depth of the foil that replaces a layer of round wires.
     *
     * @param diameter copper diameter [m]
     * @param porosity copper width over layer width, up to 1 [-]
     * @param skinDepth skin depth [m]
     * @return thickness over skin depth, phi [-]
     */
    public static double thickness(double diameter, double porosity, double skinDepth) {
        Require.positive("diameter [m]", diameter);
        Require.positive("porosity [-]", porosity);
        Require.within("porosity [-]", porosity, 0, 1);
        Require.positive("skin depth [m]", skinDepth);
        return Math.sqrt(porosity) * Math.sqrt(Math.PI / 4) * diameter / skinDepth;
    }
}
