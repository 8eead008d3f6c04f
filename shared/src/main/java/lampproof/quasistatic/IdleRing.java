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
        IdleRing free = swing(cell, source, from, time);
        boolean falling = cell.angularFrequency() * time <= Math.PI;
        if (falling && free.voltage >= 0) {
            return free;
        }
        double clampTime = timeToZero(cell, source, from);
        if (time <= clampTime) {
            return free;
        }
        IdleRing fall = swing(cell, source, from, clampTime);
        double recovery = -fall.current * cell.inductance() / source;
        if (time <= clampTime + recovery) {
            return fall.then(clamped(cell, source, fall.current, time - clampTime));
        }
        IdleRing clamped = fall.then(clamped(cell, source, fall.current, recovery));
        return clamped.then(swing(cell, source, 0, time - clampTime - recovery));
    }

    /** Infinite where it swings less far; atan2 with a root of the processor is ten times as fast as acos. */
    private static double timeToZero(SwitchingCell cell, double source, double from) {
        double amplitude = from - source;
        return amplitude > source
                ? Math.atan2(Math.sqrt(amplitude * amplitude - source * source), -source) / cell.angularFrequency()
                : Double.POSITIVE_INFINITY;
    }

    private static IdleRing swing(SwitchingCell cell, double source, double from, double time) {
        double amplitude = from - source;
        double phase = cell.angularFrequency() * time;
        double crest = amplitude / cell.impedance();
        double sine = Math.sin(phase);
        double cosine = Math.cos(phase);
        double voltage = source + amplitude * cosine;
        double square = crest * crest * 0.5 * (time - sine * cosine / cell.angularFrequency());
        return new IdleRing(time, -crest * sine, voltage, cell.capacitance() * (voltage - from), square);
    }

    private static IdleRing clamped(SwitchingCell cell, double source, double current, double time) {
        double end = current + source * time / cell.inductance();
        double square = (current * current + current * end + end * end) / 3 * time;
        return new IdleRing(time, end, 0, 0.5 * (current + end) * time, square);
    }

    private IdleRing then(IdleRing next) {
        return new IdleRing(time + next.time, next.current, next.voltage, charge + next.charge, square + next.square);
    }
}
