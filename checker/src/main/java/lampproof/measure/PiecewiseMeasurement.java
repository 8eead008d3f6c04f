package lampproof.measure;

/** A measurement that evaluates each piece by itself. */
public abstract class PiecewiseMeasurement extends Measurement {

    /** Starts a measurement. */
    protected PiecewiseMeasurement(Window window) {
        super(window);
    }

    /** Adds the next piece within the window, in the order of time. */
    protected abstract void add(Piece piece);

    @Override
    protected final void add(Pieces pieces) {
        pieces.each(this::add);
    }
}
