package lampproof.compare;

import java.util.Collection;

/** The predictions under other conditions. */
@FunctionalInterface
interface Alternatives {

    /** How far some substitutions move a figure; not a number where the driver then does not settle. */
    double shift(String figure, Collection<Substitution> substituted);
}
