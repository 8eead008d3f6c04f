package lampproof.quasistatic;

/**
 * A current that goes from one value to another, bent a little by the resistance in its loop.
 *
 * <p>To first order in decay times time the current is the straight line plus the parabola
 * {@code decay time (to - from) s (1 - s) / 2}, where s runs from 0 to 1.
 *
 * @param from current at the start [A]
 * @param to current at the end [A]
 * @param time length [s]
 * @param decay resistance over inductance of the loop [1/s]
 */
public record Ramp(double from, double to, double time, double decay) {

    /** A ramp of no length. */
    static final Ramp NONE = new Ramp(0, 0, 0, 0);

    /** Current [A] after a share of the time [-]. */
    double at(double share) {
        return from + (to - from) * share * (1 + 0.5 * decay * time * (1 - share));
    }

    /** Charge that flows [C]. */
    public double charge() {
        return time * (0.5 * (from + to) + decay * time * (to - from) / 12);
    }

    /** Integral of the squared current [A^2 s]. */
    public double square() {
        double line = (from * from + from * to + to * to) / 3;
        return time * (line + decay * time * (to * to - from * from) / 12);
    }
}
