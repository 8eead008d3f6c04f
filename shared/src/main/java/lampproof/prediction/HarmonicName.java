package lampproof.prediction;

/** The names of the figures that hold the harmonics of the line current. */
public final class HarmonicName {

    /** How the names begin; the order follows. */
    public static final String PREFIX = "line.current.harmonic.";

    private HarmonicName() {}

    /** The figure of a harmonic order. */
    public static String of(int order) {
        return PREFIX + order;
    }
}
