package lampproof.compare;

import java.util.function.DoubleBinaryOperator;
import lampproof.measure.Measured;

/** A figure that is known after the pass. */
@FunctionalInterface
interface PendingValue {

    /** The figure, after the pass. */
    Measured result();

    /** The figure times a factor. */
    default PendingValue times(double factor) {
        return () -> result().map(value -> factor * value);
    }

    /** The figure squared, times a factor. */
    default PendingValue squareTimes(double factor) {
        return () -> result().map(value -> factor * value * value);
    }

    default PendingValue plus(PendingValue other) {
        return with(other, Double::sum);
    }

    default PendingValue minus(PendingValue other) {
        return with(other, (a, b) -> a - b);
    }

    default PendingValue with(PendingValue other, DoubleBinaryOperator join) {
        return () -> result().with(other.result(), join);
    }

    /** The figure with a remark. */
    default PendingValue noted(String remark) {
        return () -> result().noted(remark);
    }
}
