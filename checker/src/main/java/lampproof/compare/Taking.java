package lampproof.compare;

import java.util.function.DoubleBinaryOperator;
import lampproof.measure.Measured;

/** A figure that will be known once the pass is over. */
@FunctionalInterface
interface Taking {

    /** The figure, after the pass. */
    Measured result();

    /** The figure times a factor. */
    default Taking times(double factor) {
        return () -> result().map(value -> factor * value);
    }

    /** The figure squared, times a factor. */
    default Taking squareTimes(double factor) {
        return () -> result().map(value -> factor * value * value);
    }

    default Taking plus(Taking other) {
        return with(other, Double::sum);
    }

    default Taking minus(Taking other) {
        return with(other, (a, b) -> a - b);
    }

    default Taking with(Taking other, DoubleBinaryOperator join) {
        return () -> result().with(other.result(), join);
    }

    /** The figure with a remark. */
    default Taking noted(String remark) {
        return () -> result().noted(remark);
    }
}
