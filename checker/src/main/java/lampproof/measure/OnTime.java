package lampproof.measure;

/** The mean time that a gate stays on [s], whole pulses only. */
public final class OnTime extends PiecewiseMeasurement {

    private final GateEdges edges;
    private double rise = Double.NaN;
    private double on;
    private int pulses;

    /** Measures the on-time of a gate. */
    public OnTime(Window window, Gate gate) {
        super(window);
        edges = new GateEdges(gate, time -> rise = time, this::fallen);
    }

    @Override
    protected void add(Piece piece) {
        edges.add(piece);
    }

    @Override
    protected Measured measured() {
        String unresolved = edges.unresolved(on / Math.max(1, pulses));
        if (!unresolved.isEmpty()) {
            return Measured.absent(unresolved);
        }
        return pulses == 0 ? Measured.absent("no whole pulse in the window") : Measured.of(on / pulses);
    }

    private void fallen(double time) {
        if (!Double.isNaN(rise)) {
            on += time - rise;
            pulses++;
        }
    }
}
