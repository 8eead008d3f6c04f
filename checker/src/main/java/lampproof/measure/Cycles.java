package lampproof.measure;

/** Cuts a gate signal into whole cycles, from rising edge to rising edge. */
abstract class Cycles extends PiecewiseMeasurement {

    static final String TOO_FEW = "fewer than two rising edges in the window";

    private final GateEdges edges;
    private double firstRise = Double.NaN;
    private double rise = Double.NaN;
    private double fall = Double.NaN;
    private int cycles;

    Cycles(Window window, Gate gate) {
        super(window);
        edges = new GateEdges(gate, this::risen, time -> fall = time);
    }

    /** Adds one whole cycle: switched on, switched off, switched on again [s]. */
    protected abstract void cycle(double on, double off, double nextOn);

    /** A cycle begins. */
    protected void begin() {}

    /** The figure over at least one whole cycle. */
    protected abstract Measured overCycles();

    @Override
    protected void add(Piece piece) {
        edges.add(piece);
    }

    @Override
    protected final Measured measured() {
        String unresolved = edges.unresolved(cycles > 0 ? span() / cycles : window().period());
        if (!unresolved.isEmpty()) {
            return Measured.absent(unresolved);
        }
        return cycles == 0 ? Measured.absent(TOO_FEW) : overCycles();
    }

    final boolean on() {
        return edges.on();
    }

    final int cycles() {
        return cycles;
    }

    final double firstRise() {
        return firstRise;
    }

    /** From the first to the last rising edge [s]. */
    final double span() {
        return rise - firstRise;
    }

    private void risen(double time) {
        if (Double.isNaN(rise)) {
            firstRise = time;
        } else {
            cycles++;
            cycle(rise, fall, time);
        }
        rise = time;
        begin();
    }
}
