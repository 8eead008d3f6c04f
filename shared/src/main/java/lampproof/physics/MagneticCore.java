package lampproof.physics;

/**
 * Dimensions of a core shape.
 *
 * <p>{@code Kg = Ac^2 WA / MLT}; {@code Ap = Ac WA}; {@code Ve = Ac lm}.
 *
 * <p>Valid for an ungapped pair of halves with its usual bobbin.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, app. B.
 *
 * @param name shape and size
 * @param area core area [m2]
 * @param windowArea winding area of the bobbin [m2]
 * @param meanTurnLength mean length of a turn [m]
 * @param pathLength magnetic path length [m]
 * @param source where the dimensions come from
 */
public record MagneticCore(
        String name, double area, double windowArea, double meanTurnLength, double pathLength, String source) {

    /** Checks the dimensions. */
    public MagneticCore {
        Require.positive("core area [m2]", area);
        Require.positive("window area [m2]", windowArea);
        Require.positive("mean turn length [m]", meanTurnLength);
        Require.positive("path length [m]", pathLength);
    }

    /** Geometrical constant [m5]. */
    public double geometricalConstant() {
        return area * area * windowArea / meanTurnLength;
    }

    /** Area product [m4]. */
    public double areaProduct() {
        return area * windowArea;
    }

    /** Core volume [m3]. */
    public double volume() {
        return area * pathLength;
    }
}
