package lampproof.compare;

import static lampproof.prediction.Probe.LINE_VOLTAGE;

import java.util.stream.IntStream;
import lampproof.measure.Harmonics;
import lampproof.measure.Measured;
import lampproof.physics.ConductedLimit;
import lampproof.prediction.NoiseMargin;
import lampproof.quasistatic.ConductedNoise;

/** The levels at the receivers of the artificial mains network, computed from the voltage at the terminals of the lamp. */
final class NoiseLevels {

    private NoiseLevels() {}

    /** Level of the switching frequency [dBuV]. */
    static PendingValue fundamental(ProbeMeasurements b) {
        Harmonics terminals = b.switchingSpectrum(LINE_VOLTAGE);
        return () -> atReceiver(terminals, 1).map(ConductedLimit::level);
    }

    /** Level of its harmonics together [dBuV]. */
    static PendingValue harmonics(ProbeMeasurements b) {
        Harmonics terminals = b.switchingSpectrum(LINE_VOLTAGE);
        return () -> terminals.result().map(fundamental -> {
            double square = IntStream.rangeClosed(2, ConductedNoise.HIGHEST_ORDER)
                    .mapToDouble(order -> Math.pow(atReceiver(terminals, order).value(), 2))
                    .sum();
            return ConductedLimit.level(Math.sqrt(square));
        });
    }

    /** Least distance below the quasi-peak limit [dB]. */
    static PendingValue margin(ProbeMeasurements b) {
        Harmonics terminals = b.switchingSpectrum(LINE_VOLTAGE);
        return () -> terminals
                .result()
                .map(fundamental -> NoiseMargin.quasiPeak(
                                1 / b.window().period(),
                                order -> atReceiver(terminals, order).value())
                        .decibels());
    }

    /** The networks of the two lines share the voltage at the terminals of the lamp. */
    private static Measured atReceiver(Harmonics terminals, int order) {
        return terminals.rms(order).map(voltage -> 0.5 * voltage);
    }
}
