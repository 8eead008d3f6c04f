package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Topology;

/**
 * The current that one switching cycle takes from the bus, as straight pieces, and its Fourier series.
 *
 * <p>The rise of the node takes two pieces; on-time and diode time are bent by resistance and take {@value #BENDS} each;
 * a period of the ring takes {@value #RING_PIECES}.
 */
final class InputCurrent {

    private static final int BENDS = 8;
    private static final int RING_PIECES = 48;

    private final double period;
    private final double[] from;
    private final double[] to;
    private final double[] time;
    private int count;

    private InputCurrent(double period, int most) {
        this.period = period;
        this.from = new double[most];
        this.to = new double[most];
        this.time = new double[most];
    }

    /** The current at an angle at which the bus drives the inductor. */
    static InputCurrent of(Driver driver, AnglePoint point) {
        boolean stepUp = driver.topology() == Topology.STEP_UP;
        CellCycle cycle = point.cycle();
        SwitchingCell cell = SwitchingCell.of(driver);
        double source = stepUp ? point.busVoltage() : point.busVoltage() - point.outputVoltage();
        double drop = driver.diode().junction(0.5 * cycle.peakCurrent());
        double swing = (stepUp ? point.outputVoltage() : point.busVoltage()) + drop;
        int ringPieces = ringPieces(cell, cycle);
        InputCurrent current = new InputCurrent(cycle.period(), 2 * BENDS + 2 + ringPieces);
        current.bent(cycle.on());
        current.rise(cycle.rise(), cycle.peakCurrent(), cycle.diode().from());
        if (stepUp) {
            current.bent(cycle.diode());
        } else {
            current.rest(cycle.diode().time());
        }
        current.ring(cell, source, swing, cycle, ringPieces);
        return current;
    }

    /** Only what switch and diode carry while they conduct, in straight lines. */
    static InputCurrent withoutNode(CellCycle cycle, boolean stepUp) {
        InputCurrent current = new InputCurrent(cycle.period(), 4);
        current.straight(cycle.on());
        current.rest(cycle.rise().time());
        if (stepUp) {
            current.straight(cycle.diode());
        } else {
            current.rest(cycle.diode().time());
        }
        current.rest(cycle.ring().time());
        return current;
    }

    /**
     * Mean square of one harmonic [A^2]: the current integrated by parts, to which each knot between two pieces adds
     * {@code (jump / (j w) + bend / (j w)^2) e^(-j w t)}.
     */
    double meanSquare(int order) {
        double omega = 2 * Math.PI * order / period;
        double real = 0;
        double imaginary = 0;
        double passed = 0;
        int before = count - 1;
        for (int k = 0; k < count; k++) {
            double jump = from[k] - to[before];
            double bend = (slope(k) - slope(before)) / omega;
            double cosine = Math.cos(omega * passed);
            double sine = Math.sin(omega * passed);
            real -= jump * sine + bend * cosine;
            imaginary += bend * sine - jump * cosine;
            passed += time[k];
            before = k;
        }
        double scale = 2 / (period * omega);
        return 0.5 * scale * scale * (real * real + imaginary * imaginary);
    }

    private double slope(int piece) {
        return (to[piece] - from[piece]) / time[piece];
    }

    private void rest(double length) {
        add(0, 0, length);
    }

    private void straight(Ramp ramp) {
        add(ramp.from(), ramp.to(), ramp.time());
    }

    private void bent(Ramp ramp) {
        double before = ramp.from();
        for (int k = 1; k <= BENDS; k++) {
            double next = ramp.at((double) k / BENDS);
            add(before, next, ramp.time() / BENDS);
            before = next;
        }
    }

    /** Two lines that carry the charge of the rise between them. */
    private void rise(NodeRise rise, double start, double end) {
        if (rise.time() > 0) {
            double middle = 2 * rise.charge() / rise.time() - 0.5 * (start + end);
            add(start, middle, rise.time() / 2);
            add(middle, end, rise.time() / 2);
        }
    }

    private static int ringPieces(SwitchingCell cell, CellCycle cycle) {
        return 1 + (int) (cycle.ring().time() * cell.angularFrequency() / (2 * Math.PI) * RING_PIECES);
    }

    /** From where the diode has left the node, or as high as the inductor current could lift it. */
    private void ring(SwitchingCell cell, double source, double swing, CellCycle cycle, int ringPieces) {
        double length = cycle.ring().time();
        double top = Math.min(swing, source + cell.amplitude(source, cycle.peakCurrent()));
        double before = 0;
        for (int k = 1; k <= ringPieces; k++) {
            double next = IdleRing.currentAfter(cell, source, top, length * k / ringPieces);
            add(before, next, length / ringPieces);
            before = next;
        }
    }

    private void add(double start, double end, double length) {
        if (length > 0) {
            from[count] = start;
            to[count] = end;
            time[count] = length;
            count++;
        }
    }
}
