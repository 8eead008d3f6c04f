package lampproof.compare;

import java.util.Locale;

/** The result of the simulation for a predicted figure. */
public enum Outcome {
    /** The simulated value lies within the tolerance. */
    AGREES,
    /** The simulated value lies outside the tolerance. */
    DIFFERS,
    /** No deck settles the figure, or its deck was omitted on purpose. */
    PREDICTED_ONLY,
    /** The simulation failed, or its results are not valid. */
    NO_VERDICT;

    /** The words in tables. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
