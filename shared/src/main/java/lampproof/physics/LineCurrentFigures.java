package lampproof.physics;

/**
 * What the harmonic rules look at.
 *
 * @param power mean power from the line [W]
 * @param powerFactor power factor of the circuit [-]
 * @param spectrum rms currents of order 1 to 39
 * @param flow when the current begins, peaks and stops
 */
public record LineCurrentFigures(double power, double powerFactor, HarmonicSpectrum spectrum, CurrentFlow flow) {

    /** Checks power and power factor. */
    public LineCurrentFigures {
        Require.positive("power [W]", power);
        Require.within("power factor [-]", powerFactor, 0, 1);
    }
}
