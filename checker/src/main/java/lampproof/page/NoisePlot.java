package lampproof.page;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lampproof.fault.UserFault;
import lampproof.measure.Gate;
import lampproof.measure.Harmonics;
import lampproof.measure.LastPeriods;
import lampproof.measure.MeasurementPass;
import lampproof.measure.Window;
import lampproof.physics.ConductedLimit;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import lampproof.quasistatic.ConductedNoise;
import lampproof.waveform.file.WaveformFile;

/** Differential-mode noise at the mains terminals over frequency, with the limits of both detectors. */
final class NoisePlot {

    private static final int TALL = 300;
    private static final int LIMIT_POINTS = 400;
    private static final int CYCLES = 20;
    private static final double GATE_THRESHOLD = 0.5;
    private static final double HERTZ_PER_KILOHERTZ = 1e3;

    private final RunRecord run;
    private final ConductedNoise noise;
    private final Axis across;

    private NoisePlot(RunRecord run) {
        this.run = run;
        this.noise = run.solution().noise();
        this.across = Axis.logarithmic(
                0.7 * noise.frequency(),
                1.4 * ConductedNoise.HIGHEST_ORDER * noise.frequency(),
                Plot.LEFT,
                Plot.LEFT + (double) Plot.COLUMNS);
    }

    /** The plot; none when the converter does not switch at the crest. */
    static List<PlotView> of(RunRecord run) {
        return run.solution().noise().frequency() > 0 ? List.of(new NoisePlot(run).view()) : List.of();
    }

    private PlotView view() {
        Plot plot = new Plot("noise-level", "Noise at the mains terminals", "dBuV", TALL)
                .add(new Layer.Stems("stem", "predicted at the crest", frequencies(1), levels(noise::atCrest)))
                .add(new Layer.Points("mean", "predicted mean", frequencies(1), levels(noise::mean)));
        run.wave(DeckKind.NOISE).ifPresent(wave -> addSimulated(plot, wave));
        plot.add(limit("limit", "quasi-peak limit", ConductedLimit::quasiPeak))
                .add(limit("limit average", "average limit", ConductedLimit::average));
        return plot.view(
                across,
                new PlotView.Scale("frequency", "kHz", across.logarithmicTicks(HERTZ_PER_KILOHERTZ)),
                "harmonics of the switching frequency");
    }

    /** A waveform without whole switching cycles adds nothing; the trust checks give the reason. */
    private void addSimulated(Plot plot, WaveformFile wave) {
        try {
            MeasurementPass gating = new MeasurementPass();
            Gate gate = new Gate(gating.channel(Probe.GATE_VOLTAGE.column()), GATE_THRESHOLD);
            LastPeriods periods = gating.add(new LastPeriods(Window.of(wave.span()), gate, CYCLES));
            gating.over(wave);
            Window window = periods.found(1);
            MeasurementPass pass = new MeasurementPass();
            Harmonics terminals =
                    pass.add(new Harmonics(window, pass.channel(Probe.LINE_VOLTAGE.column()), 1 / window.period()));
            pass.over(wave);
            plot.add(new Layer.Points(
                    "point",
                    "simulated at the crest",
                    frequencies(1 / window.period() / noise.frequency()),
                    levels(order -> atReceiver(terminals, order))));
        } catch (UserFault fault) {
            return;
        }
    }

    /** The networks of both lines share the voltage at the terminals. */
    private static double atReceiver(Harmonics terminals, int order) {
        return Math.max(Double.MIN_NORMAL, 0.5 * terminals.rms(order).value());
    }

    private double[] frequencies(double factor) {
        return orders().mapToDouble(order -> Math.log10(order * factor * noise.frequency()))
                .toArray();
    }

    private static double[] levels(IntToDoubleFunction voltage) {
        return orders().mapToDouble(order -> Math.max(0, ConductedLimit.level(voltage.applyAsDouble(order))))
                .toArray();
    }

    private static IntStream orders() {
        return IntStream.rangeClosed(1, ConductedNoise.HIGHEST_ORDER);
    }

    private Layer limit(String kind, String legend, DoubleFunction<OptionalDouble> limit) {
        double[] places = IntStream.rangeClosed(0, LIMIT_POINTS)
                .mapToDouble(k -> across.low() + (across.high() - across.low()) * k / LIMIT_POINTS)
                .toArray();
        double[] levels = Arrays.stream(places)
                .map(place -> limit.apply(Math.pow(10, place)).orElse(Double.NaN))
                .toArray();
        return new Layer.Curve(kind, legend, places, levels);
    }
}
