package lampproof.physics;

/**
 * A figure judged against one limit of one rule.
 *
 * @param rule the rule, with its edition
 * @param value the figure [its own unit]
 * @param limit the limit [unit of the figure]
 * @param margin distance to the limit, positive on the good side [unit of the figure]
 */
public record LimitVerdict(String rule, double value, double limit, double margin) {

    /** Verdict on a figure that must not pass a limit [unit of the figure]. */
    public static LimitVerdict atMost(String rule, double value, double limit) {
        return new LimitVerdict(rule, value, limit, limit - value);
    }

    /** Verdict on a figure that must reach a limit [unit of the figure]. */
    public static LimitVerdict atLeast(String rule, double value, double limit) {
        return new LimitVerdict(rule, value, limit, value - limit);
    }

    /** Whether the limit is kept. */
    public boolean pass() {
        return margin >= 0;
    }
}
