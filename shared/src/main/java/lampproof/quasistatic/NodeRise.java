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

    /** A current that hardly changes: a straight line does. */
    private static final double STIFF = 0.9;

    /**
     * The rise of a node.
     *
     * @param cell inductor and node capacitance
     * @param source E [V]
     * @param swing voltage that the node reaches [V]
     * @param from current at turn-off [A]
     * @param to current when the node has risen [A]
     */
    static NodeRise of(SwitchingCell cell, double source, double swing, double from, double to) {
        double charge = cell.capacitance() * swing;
        if (to > STIFF * from) {
            double time = 2 * charge / (from + to);
            return new NodeRise(time, charge, (from * from + from * to + to * to) / 3 * time);
        }
        return resonant(cell, source, swing, from, charge);
    }

    /** Inductor and node capacitance swing: the current is a cosine whose sine lifts the node about E. */
    private static NodeRise resonant(SwitchingCell cell, double source, double swing, double from, double charge) {
        double amplitude = cell.amplitude(source, from);
        double low = source / amplitude;
        double high = Math.min(1, (swing - source) / amplitude);
        double highCosine = Math.sqrt(1 - high * high);
        double lowCosine = Math.sqrt(1 - low * low);
        double angle = Math.atan2(high, highCosine) + Math.atan2(low, lowCosine);
        double crest = amplitude / cell.impedance();
        double turns = angle + high * highCosine + low * lowCosine;
        return new NodeRise(
                angle / cell.angularFrequency(), charge, 0.5 * crest * crest * turns / cell.angularFrequency());
    }
}
