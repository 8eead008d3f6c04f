package lampproof.design;

import lampproof.spec.Keyword;

/** How finely decks are simulated: fewer points are faster, more points are more exact. */
public enum Detail implements Keyword {
    /** Twice the usual steps, for a first look. */
    COARSE(2),
    /** What the figures are compared with. */
    NORMAL(1),
    /** Half the usual steps, to see whether a figure hangs on them. */
    FINE(0.5);

    private final double steps;

    Detail(double steps) {
        this.steps = steps;
    }

    /** Length of the longest step over the usual one [-]. */
    public double steps() {
        return steps;
    }
}
