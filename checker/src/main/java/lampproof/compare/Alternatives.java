package lampproof.compare;

import java.util.Collection;

/** The predictions under other conditions. */
@FunctionalInterface
interface Alternatives {

    /** The change of a figure by some substitutions; not a number if the driver then has no steady state. */
    double shift(String figure, Collection<Substitution> substituted);
}
