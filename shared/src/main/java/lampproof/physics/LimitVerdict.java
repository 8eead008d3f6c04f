package lampproof.physics;

/**
 * A figure judged against one limit of one rule.
 *
 * @param rule the rule, with its edition
 * @param value the figure [own unit]
 * @param limit the limit, in the unit of the figure [own unit]
 * @param margin distance to the limit, positive on the good side, in the unit of the figure [own unit]
 */
public record LimitVerdict(String rule, double value, double limit, double margin) {

    /** Verdict on a figure that must not pass a limit. */
    public static LimitVerdict atMost(String rule, double value, double limit) {
        return new LimitVerdict(rule, value, limit, limit - value);
    }

    /** Verdict on a figure that must reach a limit. */
    public static LimitVerdict atLeast(String rule, double value, double limit) {
        return new LimitVerdict(rule, value, limit, value - limit);
    }

    /** Whether the limit is kept. */
    public boolean pass() {
        return margin >= 0;
    }
}
