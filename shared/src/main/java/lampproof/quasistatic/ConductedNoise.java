package lampproof.quasistatic;

import java.util.List;
import java.util.stream.IntStream;
import lampproof.design.Driver;
import lampproof.physics.ArtificialNetwork;

/**
 * Differential-mode noise at the mains terminals: what the receiver at each line of the artificial mains network reads
 * at the harmonics of the switching frequency.
 *
 * <p>Valid while the bridge conducts throughout the switching cycle. Neglected: common mode, parasitic capacitance of the
 * chokes and inductance of the capacitors, which decide from some hundreds of kilohertz on.
 */
public final class ConductedNoise {

    /** The highest harmonic that is computed. */
    public static final int HIGHEST_ORDER = 10;

    /** What is taken for no voltage at all [V], so that it has a level. */
    private static final double NOTHING = 1e-12;

    /** Band of the receiver from 150 kHz on, CISPR 16-1-1 band B (from memory) [Hz]. */
    private static final double RECEIVER_BAND = 9e3;

    private static final int STRIDE = 4;
    private static final ArtificialNetwork NETWORK = ArtificialNetwork.FROM_9_KHZ;

    private final Driver driver;
    private final Sources sources;

    /**
     * One harmonic of the current that the converter takes, and its path to the receiver.
     *
     * @param current rms current [A]
     * @param path its path
     */
    private record Tone(double current, NoisePath path) {

        /** The rms voltage that a receiver reads [V]. */
        double voltage(Driver through) {
            return current * path.transfer(through);
        }
    }

    /**
     * The converter at one line angle.
     *
     * @param frequency switching frequency [Hz]
     * @param tones harmonics, from the first, that a receiver tuned to those of the crest hears
     */
    private record Source(double frequency, List<Tone> tones) {

        private static final Source NONE = new Source(0, List.of());

        static Source of(Driver driver, AnglePoint point, double tuned) {
            if (point.cycle() == null || !(point.bridgeCurrent() > 0)) {
                return NONE;
            }
            double frequency = 1 / point.cycle().period();
            double apart = Math.abs(frequency - tuned);
            int heard = (int) Math.min(HIGHEST_ORDER, 0.5 * RECEIVER_BAND / apart);
            if (heard == 0) {
                return NONE;
            }
            InputCurrent current = InputCurrent.of(driver, point);
            return new Source(
                    frequency,
                    IntStream.rangeClosed(1, heard)
                            .mapToObj(order -> new Tone(
                                    Math.sqrt(current.meanSquare(order)),
                                    NoisePath.of(NETWORK, point.bridgeCurrent(), order * frequency)))
                            .toList());
        }

        /** The rms voltage that a receiver reads [V]. */
        double voltage(Driver through, int order) {
            return order > tones.size() ? 0 : tones.get(order - 1).voltage(through);
        }
    }

    /** The converter over the half cycle, computed when it is first needed. */
    private static final class Sources {

        private final Operation operation;
        private List<Source> halfCycle;
        private Source crest;

        Sources(Operation operation) {
            this.operation = operation;
        }

        synchronized Source crest() {
            if (crest == null) {
                AnglePoint point = operation.crest();
                double tuned = point.cycle() == null ? 0 : 1 / point.cycle().period();
                crest = Source.of(operation.driver(), point, tuned);
            }
            return crest;
        }

        synchronized List<Source> halfCycle() {
            if (halfCycle == null) {
                List<AnglePoint> points = operation.points();
                halfCycle = IntStream.range(0, points.size())
                        .filter(k -> k % STRIDE == STRIDE / 2)
                        .mapToObj(k -> Source.of(operation.driver(), points.get(k), crest().frequency()))
                        .toList();
            }
            return halfCycle;
        }
    }

    private ConductedNoise(Driver driver, Sources sources) {
        this.driver = driver;
        this.sources = sources;
    }

    /** The noise of a driver in its steady state. */
    public static ConductedNoise of(Operation operation) {
        return new ConductedNoise(operation.driver(), new Sources(operation));
    }

    /** The same converter behind the filter of another driver. */
    public ConductedNoise through(Driver other) {
        return new ConductedNoise(other, sources);
    }

    /** Switching frequency at the crest of the line [Hz]. */
    public double frequency() {
        return sources.crest().frequency();
    }

    /** The rms voltage of a harmonic with the line held at its crest: the most that a receiver can read [V]. */
    public double atCrest(int order) {
        return Math.max(NOTHING, sources.crest().voltage(driver, order));
    }

    /**
     * The rms voltage of every harmonic but the first with the line held at its crest [V]. A single one may lie where
     * two edges of the cycle cancel each other and hang on the fourth digit of the duty; all together do not.
     */
    public double harmonicsAtCrest() {
        return Math.sqrt(IntStream.rangeClosed(2, HIGHEST_ORDER)
                .mapToDouble(order -> atCrest(order) * atCrest(order))
                .sum());
    }

    /**
     * The mean over the line half cycle that a receiver tuned to a harmonic at the crest reads [V]: where the switching
     * frequency moves, it reads only what lies in its band.
     */
    public double mean(int order) {
        double sum = 0;
        for (Source source : sources.halfCycle()) {
            sum += source.voltage(driver, order);
        }
        return Math.max(NOTHING, sum / sources.halfCycle().size());
    }
}
