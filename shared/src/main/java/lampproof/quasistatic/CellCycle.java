package lampproof.quasistatic;

/**
 * One switching cycle: the switch conducts, the node rises, the diode conducts, the node rings until the next turn-on.
 *
 * @param startCurrent inductor current at turn-on [A], negative after a ring
 * @param onTime time in which the switch conducts [s]
 * @param peakCurrent inductor current at turn-off [A]
 * @param topCurrent greatest inductor current [A]: it still grows until the node has passed E
 * @param riseTime time in which the current lifts the node [s]
 * @param diodeStart inductor current when the diode takes over [A]
 * @param diodeTime time in which the diode conducts [s]
 * @param diodeEnd inductor current when the diode stops or the switch takes over [A], zero but in continuous mode
 * @param nodeCharge charge that lifted the node [C]
 * @param ring what follows until the next turn-on
 */
public record CellCycle(
        double startCurrent,
        double onTime,
        double peakCurrent,
        double topCurrent,
        double riseTime,
        double diodeStart,
        double diodeTime,
        double diodeEnd,
        double nodeCharge,
        IdleRing ring) {

    public double period() {
        return onTime + riseTime + diodeTime + ring.time();
    }

    /** Whether the switch takes over while the diode still conducts. */
    public boolean continuous() {
        return diodeEnd > 0;
    }

    /** Inductor current at the next turn-on [A]. */
    public double nextStart() {
        return diodeEnd > 0 ? diodeEnd : ring.current();
    }

    public double onCharge() {
        return 0.5 * (startCurrent + peakCurrent) * onTime;
    }

    public double diodeCharge() {
        return 0.5 * (diodeStart + diodeEnd) * diodeTime;
    }

    /** Charge through the terminals of the switch, its capacitance included [C]. */
    public double switchCharge() {
        return onCharge() + nodeCharge + ring.charge();
    }

    public double inductorCharge() {
        return switchCharge() + diodeCharge();
    }

    /** Integral of the squared current while the switch conducts [A^2 s]. */
    public double onSquare() {
        return square(startCurrent, peakCurrent, onTime);
    }

    public double diodeSquare() {
        return square(diodeStart, diodeEnd, diodeTime);
    }

    /** Integral of the squared current at the terminals of the switch [A^2 s]. */
    public double switchSquare() {
        return onSquare() + square(peakCurrent, diodeStart, riseTime) + ring.square();
    }

    public double inductorSquare() {
        return switchSquare() + diodeSquare();
    }

    /** Least current of the cycle [A]. */
    public double trough() {
        return Math.min(Math.min(startCurrent, diodeEnd), nextStart());
    }

    /** Exact integral of the square of a straight line. */
    private static double square(double from, double to, double time) {
        return (from * from + from * to + to * to) / 3 * time;
    }
}
