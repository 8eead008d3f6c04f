package lampproof.quasistatic;

/**
 * One switching cycle: the switch conducts, the node rises, the diode conducts, the node rings until the next turn-on.
 *
 * @param startCurrent inductor current at turn-on [A], negative after a ring
 * @param onTime time in which the switch conducts [s]
 * @param peakCurrent inductor current at turn-off [A]
 * @param riseTime time in which the current lifts the node [s]
 * @param diodeStart inductor current when the diode takes over [A]
 * @param diodeTime time in which the diode conducts [s]
 * @param diodeEnd inductor current when the diode stops or the switch takes over [A], zero but in continuous mode
 * @param nodeCharge charge that lifted the node [C]
 * @param ring what follows until the next turn-on
 */
record CellCycle(
        double startCurrent,
        double onTime,
        double peakCurrent,
        double riseTime,
        double diodeStart,
        double diodeTime,
        double diodeEnd,
        double nodeCharge,
        IdleRing ring) {

    double period() {
        return onTime + riseTime + diodeTime + ring.time();
    }

    /** Inductor current at the next turn-on [A]. */
    double nextStart() {
        return diodeEnd > 0 ? diodeEnd : ring.current();
    }

    double onCharge() {
        return 0.5 * (startCurrent + peakCurrent) * onTime;
    }

    double diodeCharge() {
        return 0.5 * (diodeStart + diodeEnd) * diodeTime;
    }

    /** Charge through the terminals of the switch, its capacitance included [C]. */
    double switchCharge() {
        return onCharge() + nodeCharge + ring.charge();
    }

    double inductorCharge() {
        return switchCharge() + diodeCharge();
    }

    /** Integral of the squared current while the switch conducts [A^2 s]. */
    double onSquare() {
        return square(startCurrent, peakCurrent, onTime);
    }

    double diodeSquare() {
        return square(diodeStart, diodeEnd, diodeTime);
    }

    /** Integral of the squared current at the terminals of the switch [A^2 s]. */
    double switchSquare() {
        return onSquare() + square(peakCurrent, diodeStart, riseTime) + ring.square();
    }

    double inductorSquare() {
        return switchSquare() + diodeSquare();
    }

    /** Least current of the cycle [A]. */
    double trough() {
        return Math.min(Math.min(startCurrent, diodeEnd), nextStart());
    }

    /** Exact integral of the square of a straight line. */
    private static double square(double from, double to, double time) {
        return (from * from + from * to + to * to) / 3 * time;
    }
}
