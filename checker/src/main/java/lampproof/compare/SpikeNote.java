package lampproof.compare;

import java.util.Map;
import java.util.function.Function;
import lampproof.measure.Channel;
import lampproof.measure.Measured;
import lampproof.measure.SpikeWidth;
import lampproof.prediction.Prediction;
import lampproof.prediction.Probe;
import lampproof.unit.Engineering;

/**
 * How long the peak of a blocking voltage stays above its plateau, which is the predicted value: nothing is filtered,
 * and the reader sees how narrow the peak is.
 */
final class SpikeNote {

    private static final Map<String, Function<ProbeMeasurements, Channel>> BLOCKING = Map.of(
            "switch.voltage.peak", measurements -> measurements.channel(Probe.SWITCH_VOLTAGE),
            "diode.voltage.peak", measurements -> measurements.reversed(Probe.DIODE_VOLTAGE));

    private SpikeNote() {}

    /** The peak with that note, where it is one of a blocking voltage with a spike. */
    static PendingValue noted(PendingValue peak, Prediction prediction, ProbeMeasurements measurements) {
        Function<ProbeMeasurements, Channel> blocking =
                BLOCKING.get(prediction.figure().name());
        if (blocking == null) {
            return peak;
        }
        double level = SpikeWidth.ABOVE_PLATEAU * prediction.value();
        SpikeWidth spike =
                measurements.pass().add(new SpikeWidth(measurements.window(), blocking.apply(measurements), level));
        return () -> peak.result().noted(text(level, spike.result()));
    }

    private static String text(double level, Measured spike) {
        if (!spike.present()) {
            return "";
        }
        String width = "above " + Engineering.rounded(level, "V") + " for " + Engineering.rounded(spike.value(), "s");
        return spike.note().isEmpty() ? width : width + ", " + spike.note();
    }
}
