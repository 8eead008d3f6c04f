package lampproof.design;

import lampproof.design.Surge.Wave;
import lampproof.physics.RingWave;

/**
 * How far a surge lifts the bus, to first order: its volt-seconds until the first zero, behind its own resistance, fuse and
 * damping, charge the capacitors of filter and bus. Later half waves add a quarter at most.
 */
final class LetThroughVoltage {

    private static final double LATER = 1.25;
    private static final int STEPS = 200;

    /** Volt-seconds of a ring wave of one volt until its first zero [s]. */
    private static final double RING_SECONDS = ringSeconds();

    private LetThroughVoltage() {}

    /** Rise of the bus [V] with filter and bus as they are given or were chosen; never more than the surge itself. */
    static double of(DesignValues values) {
        Surge surge = ExposureSizing.surge(values);
        double resistance = surge.impedance() + values.known("filter.fuse_resistance") + values.known("filter.damping");
        double capacitance = values.known("filter.capacitance") + values.known("bus.capacitance");
        double rise = LATER * voltSeconds(surge) / (resistance * Math.max(1e-12, capacitance));
        return Math.min(surge.voltage(), rise);
    }

    private static double voltSeconds(Surge surge) {
        return surge.wave() == Wave.COMBINATION ? Double.POSITIVE_INFINITY : surge.voltage() * RING_SECONDS;
    }

    private static double ringSeconds() {
        double step = 0.25 / RingWave.FREQUENCY / STEPS;
        double sum = 0;
        for (int k = 0; k < STEPS; k++) {
            sum += step * RingWave.voltage(1, (k + 0.5) * step);
        }
        return sum;
    }
}
