package lampproof.physics;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Standard core shapes and the choice of the smallest that will do.
 *
 * <p>Chosen is the core of least volume whose geometrical constant or area product reaches the one required.
 *
 * <p>Valid to about 3 per cent; makers differ. Bobbins differ more.
 *
 * <p>Source: EE, PQ and ETD shapes: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020,
 * app. B. EF, RM and EP shapes: makers' data books to IEC 60205, from memory, bobbins included.
 */
public final class CoreTable {

    private static final String PRINTED = "Erickson, Maksimović, Fundamentals of Power Electronics, 3rd ed., app. B";
    private static final String REMEMBERED = "makers' data books to IEC 60205, from memory";

    private static final List<MagneticCore> CORES = List.of(
            printed("EE12", 0.14, 0.085, 2.28, 2.7),
            printed("EE16", 0.19, 0.190, 3.40, 3.45),
            printed("EE19", 0.23, 0.284, 3.69, 3.94),
            printed("EE22", 0.41, 0.196, 3.99, 3.96),
            printed("EE30", 1.09, 0.476, 6.60, 5.77),
            printed("EE40", 1.27, 1.10, 8.50, 7.70),
            printed("PQ20/16", 0.62, 0.256, 4.4, 3.74),
            printed("PQ20/20", 0.62, 0.384, 4.4, 4.54),
            printed("PQ26/20", 1.19, 0.333, 5.62, 4.63),
            printed("PQ26/25", 1.18, 0.503, 5.62, 5.55),
            printed("PQ32/30", 1.61, 0.995, 6.71, 7.46),
            printed("ETD29", 0.76, 0.903, 5.33, 7.20),
            remembered("EF12.6", 0.124, 0.116, 2.4, 2.97),
            remembered("EF16", 0.201, 0.22, 3.3, 3.76),
            remembered("EF20", 0.321, 0.34, 4.1, 4.63),
            remembered("EF25", 0.52, 0.61, 5.0, 5.75),
            remembered("RM5", 0.238, 0.095, 2.5, 2.21),
            remembered("RM6", 0.37, 0.15, 3.0, 2.86),
            remembered("RM8", 0.64, 0.30, 4.2, 3.8),
            remembered("EP7", 0.103, 0.043, 1.8, 1.57),
            remembered("EP10", 0.113, 0.114, 2.15, 1.92),
            remembered("EP13", 0.195, 0.135, 2.4, 2.42));

    private CoreTable() {}

    /** All cores, by shape. */
    public static List<MagneticCore> all() {
        return CORES;
    }

    /** The core of a name such as {@code EE16}, whatever the case. */
    public static Optional<MagneticCore> named(String name) {
        return CORES.stream().filter(core -> core.name().equalsIgnoreCase(name)).findFirst();
    }

    /** The smallest core whose geometrical constant reaches the one required [m5]; empty when none does. */
    public static Optional<MagneticCore> smallestByGeometricalConstant(double required) {
        return smallest(MagneticCore::geometricalConstant, required);
    }

    /** The smallest core whose area product reaches the one required [m4]; empty when none does. */
    public static Optional<MagneticCore> smallestByAreaProduct(double required) {
        return smallest(MagneticCore::areaProduct, required);
    }

    private static Optional<MagneticCore> smallest(ToDoubleFunction<MagneticCore> size, double required) {
        return CORES.stream()
                .filter(core -> size.applyAsDouble(core) >= required)
                .min(Comparator.comparingDouble(MagneticCore::volume));
    }

    private static MagneticCore printed(String name, double area, double window, double turn, double path) {
        return core(name, area, window, turn, path, PRINTED);
    }

    private static MagneticCore remembered(String name, double area, double window, double turn, double path) {
        return core(name, area, window, turn, path, REMEMBERED);
    }

    /** Dimensions as the tables print them, in cm2, cm2, cm and cm. */
    private static MagneticCore core(String name, double area, double window, double turn, double path, String source) {
        return new MagneticCore(name, area * 1e-4, window * 1e-4, turn * 1e-2, path * 1e-2, source);
    }
}
