package lampproof.quasistatic;

/**
 * The node swings about E with the inductor once the diode has stopped, until the next turn-on.
 *
 * <p>A swing that would go below zero is caught by the body diode of the switch; the inductor current then returns
 * linearly to zero and the swing starts again from zero volts.
 *
 * @param time length [s]
 * @param current inductor current at its end [A]
 * @param voltage node voltage at its end [V]
 * @param charge charge through the inductor [C]
 * @param square integral of the squared current [A^2 s]
 */
public record IdleRing(double time, double current, double voltage, double charge, double square) {

    /** No ring: the switch takes over from the diode at a node voltage [V]. */
    static IdleRing none(double nodeVoltage) {
        return new IdleRing(0, 0, nodeVoltage, 0, 0);
    }

    /**
     * The ring from rest.
     *
     * @param cell inductor and node capacitance
     * @param source E [V]
     * @param from node voltage at its start [V]
     * @param time length [s]
     */
    static IdleRing from(SwitchingCell cell, double source, double from, double time) {
        double clampTime = clampTime(cell, source, from, time);
        if (time <= clampTime) {
            return swing(cell, source, from, time);
        }
        double caught = caught(cell, source, from);
        double back = timeToRest(cell, source, caught);
        IdleRing fall = fall(cell, source, from, clampTime, caught);
        double left = time - clampTime;
        return left <= back
                ? fall.then(clamped(cell, source, caught, left))
                : fall.then(clamped(cell, source, caught, back)).then(swing(cell, source, 0, left - back));
    }

    /** Inductor current [A] at the end of the ring from rest, without the rest of it. */
    static double currentAfter(SwitchingCell cell, double source, double from, double time) {
        double clampTime = clampTime(cell, source, from, time);
        if (time <= clampTime) {
            return swingCurrent(cell, from - source, time);
        }
        double caught = caught(cell, source, from);
        double back = timeToRest(cell, source, caught);
        double left = time - clampTime;
        return left <= back ? clampedCurrent(cell, source, caught, left) : swingCurrent(cell, -source, left - back);
    }

    /**
     * When the node comes to zero [s]; infinite where it does not within the time, and never before a quarter of a turn.
     * With a root of the processor atan2 is ten times as fast as acos.
     */
    private static double clampTime(SwitchingCell cell, double source, double from, double time) {
        double amplitude = from - source;
        boolean soon = cell.angularFrequency() * time <= 0.5 * Math.PI;
        return soon || amplitude <= source
                ? Double.POSITIVE_INFINITY
                : Math.atan2(Math.sqrt(amplitude * amplitude - source * source), -source) / cell.angularFrequency();
    }

    /** Inductor current when the node comes to zero [A]. */
    private static double caught(SwitchingCell cell, double source, double from) {
        double amplitude = from - source;
        return -Math.sqrt(amplitude * amplitude - source * source) / cell.impedance();
    }

    /** How long the body diode carries a current [s]. */
    private static double timeToRest(SwitchingCell cell, double source, double caught) {
        return -caught * cell.inductance() / source;
    }

    private static double swingCurrent(SwitchingCell cell, double amplitude, double time) {
        return -amplitude / cell.impedance() * Math.sin(cell.angularFrequency() * time);
    }

    private static double clampedCurrent(SwitchingCell cell, double source, double current, double time) {
        return current + source * time / cell.inductance();
    }

    private static IdleRing swing(SwitchingCell cell, double source, double from, double time) {
        double phase = cell.angularFrequency() * time;
        return swing(cell, source, from, time, Math.cos(phase), Math.sin(phase));
    }

    /** The swing down to zero volts, whose sine and cosine follow from where it ends. */
    private static IdleRing fall(SwitchingCell cell, double source, double from, double time, double caught) {
        double amplitude = from - source;
        return swing(cell, source, from, time, -source / amplitude, -caught * cell.impedance() / amplitude);
    }

    private static IdleRing swing(
            SwitchingCell cell, double source, double from, double time, double cosine, double sine) {
        double amplitude = from - source;
        double crest = amplitude / cell.impedance();
        double voltage = source + amplitude * cosine;
        double square = crest * crest * 0.5 * (time - sine * cosine / cell.angularFrequency());
        return new IdleRing(time, -crest * sine, voltage, cell.capacitance() * (voltage - from), square);
    }

    private static IdleRing clamped(SwitchingCell cell, double source, double current, double time) {
        double end = clampedCurrent(cell, source, current, time);
        double square = (current * current + current * end + end * end) / 3 * time;
        return new IdleRing(time, end, 0, 0.5 * (current + end) * time, square);
    }

    private IdleRing then(IdleRing next) {
        return new IdleRing(time + next.time, next.current, next.voltage, charge + next.charge, square + next.square);
    }
}
