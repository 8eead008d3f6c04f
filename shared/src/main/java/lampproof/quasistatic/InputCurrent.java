package lampproof.quasistatic;

import java.util.ArrayList;
import java.util.List;
import lampproof.design.Driver;
import lampproof.design.Topology;
import org.hipparchus.complex.Complex;

/**
 * The current that one switching cycle takes from the bus, as straight pieces, and its Fourier series.
 *
 * <p>The rise of the node takes two pieces; on-time and diode time are bent by resistance and take {@value #BENDS} each;
 * a period of the ring takes {@value #RING_PIECES}.
 */
final class InputCurrent {

    private static final int BENDS = 8;
    private static final int RING_PIECES = 48;

    private final List<Ramp> pieces = new ArrayList<>();
    private final double period;

    private InputCurrent(double period) {
        this.period = period;
    }

    /** The current at an angle at which the bus drives the inductor. */
    static InputCurrent of(Driver driver, AnglePoint point) {
        boolean stepUp = driver.topology() == Topology.STEP_UP;
        CellCycle cycle = point.cycle();
        double source = stepUp ? point.busVoltage() : point.busVoltage() - point.outputVoltage();
        double drop = driver.diode().junction(0.5 * cycle.peakCurrent());
        double swing = (stepUp ? point.outputVoltage() : point.busVoltage()) + drop;
        InputCurrent current = new InputCurrent(cycle.period());
        current.bent(cycle.on());
        current.rise(cycle.rise(), cycle.peakCurrent(), cycle.diode().from());
        if (stepUp) {
            current.bent(cycle.diode());
        } else {
            current.add(none(cycle.diode().time()));
        }
        current.ring(SwitchingCell.of(driver), source, swing, cycle);
        return current;
    }

    /** Only what switch and diode carry while they conduct, in straight lines. */
    static InputCurrent withoutNode(CellCycle cycle, boolean stepUp) {
        return of(List.of(
                cycle.on(),
                none(cycle.rise().time()),
                stepUp ? cycle.diode() : none(cycle.diode().time()),
                none(cycle.ring().time())));
    }

    /** A current of straight pieces, one after the other. */
    static InputCurrent of(List<Ramp> pieces) {
        InputCurrent current =
                new InputCurrent(pieces.stream().mapToDouble(Ramp::time).sum());
        pieces.forEach(current::add);
        return current;
    }

    /**
     * The complex amplitude of one harmonic against a cosine at turn-on [A]: integrated by parts, each knot between two
     * pieces adds {@code (jump / (j w) + bend / (j w)^2) e^(-j w t)}.
     */
    Complex harmonic(int order) {
        double omega = 2 * Math.PI * order / period;
        double real = 0;
        double imaginary = 0;
        double time = 0;
        Ramp before = pieces.get(pieces.size() - 1);
        for (Ramp piece : pieces) {
            double jump = piece.from() - before.to();
            double bend = (slope(piece) - slope(before)) / omega;
            double cosine = Math.cos(omega * time);
            double sine = Math.sin(omega * time);
            real -= jump * sine + bend * cosine;
            imaginary += bend * sine - jump * cosine;
            time += piece.time();
            before = piece;
        }
        double scale = 2 / (period * omega);
        return new Complex(real * scale, imaginary * scale);
    }

    /** Mean square of one harmonic [A^2]. */
    double meanSquare(int order) {
        double amplitude = harmonic(order).norm();
        return 0.5 * amplitude * amplitude;
    }

    private static double slope(Ramp piece) {
        return (piece.to() - piece.from()) / piece.time();
    }

    private static Ramp none(double time) {
        return new Ramp(0, 0, time, 0);
    }

    private void bent(Ramp ramp) {
        double before = ramp.from();
        for (int k = 1; k <= BENDS; k++) {
            double next = ramp.at((double) k / BENDS);
            add(new Ramp(before, next, ramp.time() / BENDS, 0));
            before = next;
        }
    }

    /** Two lines that carry the charge of the rise between them. */
    private void rise(NodeRise rise, double from, double to) {
        if (rise.time() > 0) {
            double middle = 2 * rise.charge() / rise.time() - 0.5 * (from + to);
            add(new Ramp(from, middle, rise.time() / 2, 0));
            add(new Ramp(middle, to, rise.time() / 2, 0));
        }
    }

    /** From where the diode has left the node, or as high as the inductor current could lift it. */
    private void ring(SwitchingCell cell, double source, double swing, CellCycle cycle) {
        double time = cycle.ring().time();
        double from = Math.min(swing, source + cell.amplitude(source, cycle.peakCurrent()));
        int count = 1 + (int) (time * cell.angularFrequency() / (2 * Math.PI) * RING_PIECES);
        double before = 0;
        for (int k = 1; k <= count; k++) {
            double next = IdleRing.from(cell, source, from, time * k / count).current();
            add(new Ramp(before, next, time / count, 0));
            before = next;
        }
    }

    private void add(Ramp piece) {
        if (piece.time() > 0) {
            pieces.add(piece);
        }
    }
}
