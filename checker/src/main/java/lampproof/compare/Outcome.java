package lampproof.compare;

import java.util.Locale;

/** What a simulation says of a predicted figure. */
public enum Outcome {
    /** The simulated value lies within the tolerance. */
    AGREES,
    /** It lies outside. */
    DIFFERS,
    /** No deck settles the figure, or its deck was left out on purpose. */
    PREDICTED_ONLY,
    /** The simulation failed, or its results are not to be trusted. */
    NO_VERDICT;

    /** The words in tables. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
