package lampproof.measure;

import org.hipparchus.complex.Complex;

/**
 * The cosine of the angle between the fundamentals of a voltage and a current [-].
 *
 * <p>Source: IEEE Std 1459-2010, 3.1.2.
 */
public final class DisplacementFactor {

    private DisplacementFactor() {}

    /** The displacement factor of a voltage and a current of one window. */
    public static Measured of(Harmonics voltage, Harmonics current) {
        return voltage.result()
                .then(u -> current.result().then(i -> {
                    Complex power =
                            voltage.amplitude(1).multiply(current.amplitude(1).conjugate());
                    return Measured.ratio(power.getReal(), power.norm(), "there is no fundamental");
                }));
    }
}
