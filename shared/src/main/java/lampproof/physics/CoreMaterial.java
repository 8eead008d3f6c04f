package lampproof.physics;

import java.util.List;
import java.util.Optional;

/**
 * A ferrite with its core-loss coefficients and its hot saturation.
 *
 * <p>Coefficients of {@link CoreLoss}.
 *
 * <p>Valid for 25 degC, no bias, from sinusoidal data; for N87 they ran from equal to 53 per cent above 14 measured
 * triangles of duty 0.5 (50 to 200 kHz, 41 to 189 mT), the more the higher the flux.
 *
 * <p>Source: Princeton MagNet open core-loss measurements, constants table (coefficients); makers' data sheets, from
 * memory (saturation).
 *
 * @param name name of the material
 * @param loss core-loss coefficients
 * @param hotSaturation saturation flux density at 100 degC [T]
 */
public record CoreMaterial(String name, CoreLoss loss, double hotSaturation) {

    private static final List<CoreMaterial> TABLE = List.of(
            new CoreMaterial("N87", new CoreLoss(0.79822, 1.3453, 2.5752), 0.39),
            new CoreMaterial("3C90", new CoreLoss(0.23732, 1.3932, 2.5481), 0.38),
            new CoreMaterial("N27", new CoreLoss(0.42941, 1.3697, 2.4634), 0.41));

    /** Checks the saturation. */
    public CoreMaterial {
        Require.positive("saturation flux density [T]", hotSaturation);
    }

    /** All materials of the table. */
    public static List<CoreMaterial> all() {
        return TABLE;
    }

    /** The material of a name, whatever the case. */
    public static Optional<CoreMaterial> named(String name) {
        return TABLE.stream()
                .filter(material -> material.name.equalsIgnoreCase(name))
                .findFirst();
    }
}
