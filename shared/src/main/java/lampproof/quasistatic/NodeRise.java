package lampproof.quasistatic;

/**
 * The inductor current lifts the node from zero until the diode takes over, or as far as it can.
 *
 * @param time length [s]
 * @param charge charge that lifts the node [C]
 * @param square integral of the squared current [A^2 s]
 */
public record NodeRise(double time, double charge, double square) {

    /** A node that stays where it is. */
    static final NodeRise NONE = new NodeRise(0, 0, 0);

    /** A nearly constant current: a straight line is accurate enough. */
    private static final double STIFF = 0.9;

    /**
     * How long a node rises [s].
     *
     * @param cell inductor and node capacitance
     * @param source E [V]
     * @param swing voltage that the node reaches [V]
     * @param from current at turn-off [A]
     * @param to current when the node has risen [A]
     */
    static double time(SwitchingCell cell, double source, double swing, double from, double to) {
        return isStiff(from, to)
                ? 2 * cell.capacitance() * swing / (from + to)
                : angle(source, swing - source, from * cell.impedance(), to * cell.impedance())
                        / cell.angularFrequency();
    }

    /** The rise of a node that takes a time [s]. */
    static NodeRise lasting(double time, SwitchingCell cell, double source, double swing, double from, double to) {
        double square = isStiff(from, to)
                ? (from * from + from * to + to * to) / 3 * time
                : resonantSquare(time, cell, source, swing, from, to);
        return new NodeRise(time, cell.capacitance() * swing, square);
    }

    private static boolean isStiff(double from, double to) {
        return to > STIFF * from;
    }

    /**
     * Inductor and node capacitance swing: the current is a cosine whose sine lifts the node about E. The angle between two
     * points of that circle, each given as voltage below or above E and as current times impedance [V].
     */
    private static double angle(double below, double above, double from, double to) {
        return Math.atan2(above * from + below * to, from * to - above * below);
    }

    private static double resonantSquare(
            double time, SwitchingCell cell, double source, double swing, double from, double to) {
        double crest = cell.amplitude(source, from) / cell.impedance();
        return 0.5 * (crest * crest * time + cell.capacitance() * ((swing - source) * to + source * from));
    }
}
