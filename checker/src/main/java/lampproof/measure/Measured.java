package lampproof.measure;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/**
 * A measured figure in SI base units, or its absence.
 *
 * @param number the figure [SI base unit]; empty when it could not be measured
 * @param note why it is absent, or what must be said beside it; empty when there is nothing to say
 */
public record Measured(OptionalDouble number, String note) {

    /** A figure [SI base unit]; a number that is not finite counts as absent. */
    public static Measured of(double value) {
        return Double.isFinite(value) ? new Measured(OptionalDouble.of(value), "") : absent("the figure is not finite");
    }

    /** No figure, and why. */
    public static Measured absent(String reason) {
        return new Measured(OptionalDouble.empty(), reason);
    }

    /** Numerator over denominator [SI base unit]; absent, with the reason, when the denominator is zero. */
    public static Measured ratio(double numerator, double denominator, String whenZero) {
        return denominator == 0 ? absent(whenZero) : of(numerator / denominator);
    }

    /** Whether there is a figure. */
    public boolean present() {
        return number.isPresent();
    }

    /**
     * The figure [SI base unit].
     *
     * @throws IllegalStateException when it is absent
     */
    public double value() {
        return number.orElseThrow(() -> new IllegalStateException("absent: " + note));
    }

    /** The figure changed, or the same absence. */
    public Measured map(DoubleUnaryOperator change) {
        return then(value -> of(change.applyAsDouble(value)));
    }

    /** What follows from the figure, or the same absence; a note stays. */
    public Measured then(Function<Double, Measured> next) {
        return present() ? next.apply(value()).noted(note) : this;
    }

    /** This figure and another joined, or the first absence. */
    public Measured with(Measured other, DoubleBinaryOperator join) {
        return then(a -> other.map(b -> join.applyAsDouble(a, b)));
    }

    /** The same with one more thing to say. */
    public Measured noted(String more) {
        boolean nothingNew = more.isEmpty() || note.equals(more);
        return nothingNew ? this : new Measured(number, note.isEmpty() ? more : note + "; " + more);
    }
}
