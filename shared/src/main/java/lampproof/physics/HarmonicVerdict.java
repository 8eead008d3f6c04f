package lampproof.physics;

/**
 * A harmonic, or the whole line current, judged against one limit.
 *
 * @param rule the rule, with its edition
 * @param order harmonic order; 0 for a rule on the whole current
 * @param value the figure: a current over the fundamental [-], a current per watt [A/W] or an angle [rad]
 * @param limit the limit [unit of the figure]
 * @param margin distance to the limit, positive on the good side [unit of the figure]
 */
public record HarmonicVerdict(String rule, int order, double value, double limit, double margin) {

    /** Verdict on a figure that must not pass a limit [unit of the figure]. */
    public static HarmonicVerdict atMost(String rule, int order, double value, double limit) {
        return new HarmonicVerdict(rule, order, value, limit, limit - value);
    }

    /** Verdict on a figure that must reach a limit [unit of the figure]. */
    public static HarmonicVerdict atLeast(String rule, int order, double value, double limit) {
        return new HarmonicVerdict(rule, order, value, limit, value - limit);
    }

    /** Whether the limit is kept. */
    public boolean pass() {
        return margin >= 0;
    }

    /** Margin over the limit; the smaller, the closer to failing [-]. */
    public double relativeMargin() {
        return margin / limit;
    }
}
