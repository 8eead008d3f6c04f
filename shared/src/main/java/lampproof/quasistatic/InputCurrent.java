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
            current.pieces.add(none(cycle.diode().time()));
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
        current.pieces.addAll(pieces);
        return current;
    }

    /** The complex amplitude of one harmonic against a cosine at turn-on [A]. */
    Complex harmonic(int order) {
        double omega = 2 * Math.PI * order / period;
        Complex sum = Complex.ZERO;
        double start = 0;
        for (Ramp piece : pieces) {
            sum = sum.add(integral(piece, omega, start));
            start += piece.time();
        }
        return sum.multiply(2 / period);
    }

    private static Ramp none(double time) {
        return new Ramp(0, 0, time, 0);
    }

    private void bent(Ramp ramp) {
        double before = ramp.from();
        for (int k = 1; k <= BENDS; k++) {
            double next = ramp.at((double) k / BENDS);
            pieces.add(new Ramp(before, next, ramp.time() / BENDS, 0));
            before = next;
        }
    }

    /** Two lines that carry the charge of the rise between them. */
    private void rise(NodeRise rise, double from, double to) {
        if (rise.time() > 0) {
            double middle = 2 * rise.charge() / rise.time() - 0.5 * (from + to);
            pieces.add(new Ramp(from, middle, rise.time() / 2, 0));
            pieces.add(new Ramp(middle, to, rise.time() / 2, 0));
        }
    }

    /** From where the diode has left the node, or as high as the inductor current could lift it. */
    private void ring(SwitchingCell cell, double source, double swing, CellCycle cycle) {
        double time = cycle.ring().time();
        double from = Math.min(swing, source + Math.hypot(source, cycle.peakCurrent() * cell.impedance()));
        int count = 1 + (int) (time * cell.angularFrequency() / (2 * Math.PI) * RING_PIECES);
        double before = 0;
        for (int k = 1; k <= count; k++) {
            double next = IdleRing.from(cell, source, from, time * k / count).current();
            pieces.add(new Ramp(before, next, time / count, 0));
            before = next;
        }
    }

    /** Integral of a straight piece times {@code exp(-j omega t)} [A s]. */
    private static Complex integral(Ramp piece, double omega, double start) {
        if (!(piece.time() > 0) || (piece.from() == 0 && piece.to() == 0)) {
            return Complex.ZERO;
        }
        double slope = (piece.to() - piece.from()) / (piece.time() * omega);
        return end(piece.from(), slope, omega * start, omega)
                .subtract(end(piece.to(), slope, omega * (start + piece.time()), omega));
    }

    /** What one end adds: {@code (i / (j w) + slope / (j w)^2) e^(-j phase)}. */
    private static Complex end(double current, double slope, double phase, double omega) {
        double cosine = Math.cos(phase) / omega;
        double sine = Math.sin(phase) / omega;
        return new Complex(-slope * cosine - current * sine, slope * sine - current * cosine);
    }
}
