package lampproof.instrument;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lampproof.measure.Channel;
import lampproof.measure.Extremes;
import lampproof.measure.FlickerIndex;
import lampproof.measure.FlickerPercent;
import lampproof.measure.FundamentalFrequency;
import lampproof.measure.Gate;
import lampproof.measure.LineWindow;
import lampproof.measure.Mean;
import lampproof.measure.Measured;
import lampproof.measure.MeasurementPass;
import lampproof.measure.Peak;
import lampproof.measure.PeriodMeans;
import lampproof.measure.PeriodRms;
import lampproof.measure.Sampling;
import lampproof.measure.SwitchingFrequency;
import lampproof.measure.Trough;
import lampproof.measure.Window;
import lampproof.physics.FlickerLimit;
import lampproof.physics.LimitVerdict;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;
import lampproof.waveform.Span;

/** Light, or a current that it follows: its flicker depth and frequency. */
final class LightCapture {

    /** Twice any line frequency is below [Hz]. */
    private static final double SLOW = 140;

    /** IEEE Std 1789-2015 limits flicker up to here [Hz]. */
    private static final double FASTEST = 3000;

    /** Enough that a pulse of 2 % of the period keeps its height; own choice, no source. */
    private static final double RUNNING_MEANS_PER_PULSE = 250;

    private static final double HYSTERESIS = 0.1;
    private static final double ALIKE = 1.2;
    private static final double STEADY = 0.05;

    /** As long as a half period of the line [s]. */
    private static final double SHORTEST_STRETCH = 9e-3;

    private final MappedTable table;
    private final String quantity;
    private final Sampling sampling;
    private final Span span;
    private final List<String> remarks;
    private final Measured frequency;
    private final Window window;
    private final double running;
    private final Mean mean;
    private final PeriodMeans means;
    private final PeriodRms swings;
    private final Extremes extremes;
    private final FlickerPercent percent;
    private final FlickerIndex index;

    /**
     * Adds the measurements to a pass.
     *
     * @param remarks receives remarks for the user
     */
    LightCapture(
            MappedTable table, String quantity, Survey survey, Span span, MeasurementPass pass, List<String> remarks) {
        this.table = table;
        this.quantity = quantity;
        this.span = span;
        this.remarks = remarks;
        sampling = survey.sampling();
        Measured found = frequency(survey.frequency(quantity));
        boolean coarse = found.present() && !sampling.follows(found.value());
        frequency = coarse ? Measured.absent("too few points in a period of the light") : found;
        window = frequency.present() ? periods(frequency.value()) : parts();
        running = runningMean(frequency);
        Channel light = pass.channel(quantity);
        mean = pass.add(new Mean(window, light));
        means = pass.add(new PeriodMeans(stretches(), light));
        swings = pass.add(new PeriodRms(stretches(), light));
        extremes = pass.add(new Extremes(window, light));
        percent = pass.add(new FlickerPercent(window, light, running));
        index = pass.add(new FlickerIndex(window, light, running));
    }

    /** The figures after the pass. */
    CaptureSection section() {
        remarkUnsteady();
        LineQuantity.clipped(extremes.clippedAbove(), quantity).ifPresent(remarks::add);
        String smoothed = "running mean of " + Engineering.rounded(running, "s");
        List<CaptureFigure> figures = List.of(
                new CaptureFigure(quantity + ".mean", quantity.equals("light") ? "1" : "A", mean.result()),
                new CaptureFigure(quantity + ".flicker.frequency", "Hz", frequency),
                new CaptureFigure(
                        quantity + ".flicker.percent",
                        "%",
                        percent.result().map(share -> 100 * share).noted(smoothed)),
                new CaptureFigure(
                        quantity + ".flicker.index",
                        "1",
                        percent.result().then(depth -> index.result()).noted(smoothed)));
        return new CaptureSection(quantity, window.text(), figures, limits(frequency, percent.result()));
    }

    /** The window in intervals of whole periods, each long enough for a mean of the shortest pulses. */
    private Window stretches() {
        int together = (int) Math.ceil(SHORTEST_STRETCH / window.period());
        int count = window.periods() / together;
        return new Window(window.end() - count * together * window.period(), window.end(), count, window.what());
    }

    /** Both the mean and the swing about it must stay. */
    private void remarkUnsteady() {
        if (!means.result().present() || !swings.result().present()) {
            return;
        }
        double[] mean = means.means();
        double[] swing = IntStream.range(0, mean.length)
                .mapToDouble(i -> Math.sqrt(Math.max(0, square(swings.levels()[i]) - square(mean[i]))))
                .toArray();
        double scale = Arrays.stream(mean).map(Math::abs).max().orElse(0);
        if (!remarkedUnsteady("mean", mean, scale)) {
            remarkedUnsteady("rms swing", swing, scale);
        }
    }

    private static double square(double value) {
        return value * value;
    }

    private boolean remarkedUnsteady(String what, double[] levels, double scale) {
        double last = levels[levels.length - 1];
        OptionalDouble odd = Arrays.stream(levels)
                .filter(level -> Math.abs(level - last) > STEADY * scale)
                .findFirst();
        odd.ifPresent(level -> remarks.add(quantity + " is not steady: " + what + " " + number(level) + ", but "
                + number(last) + " in the last; choose an interval with --from and --to"));
        return odd.isPresent();
    }

    private String number(double level) {
        return quantity.equals(CaptureQuantity.LIGHT.word())
                ? CaptureQuantity.LIGHT.text(level)
                : CaptureQuantity.STRING_CURRENT.text(level);
    }

    /** The usual one removes the switching ripple; the pulses of a modulator need a shorter one [s]. */
    private static double runningMean(Measured frequency) {
        return frequency.present() && frequency.value() > SLOW
                ? 1 / (RUNNING_MEANS_PER_PULSE * frequency.value())
                : FlickerPercent.RUNNING_MEAN;
    }

    private Window periods(double frequency) {
        Window window = LineWindow.last(span, frequency);
        return new Window(window.start(), window.end(), window.periods(), "period");
    }

    private Window parts() {
        return new Window(span.start(), span.end(), 2, "part");
    }

    /** At twice the line frequency, or else at the frequency of a modulator [Hz]. */
    private Measured frequency(Measured slow) {
        double lowest = Math.max(SLOW, 1.05 / span.length());
        double highest = Math.min(FASTEST, sampling.rate() / 8);
        if (slow.present() || lowest >= highest) {
            return slow;
        }
        Measured fast = fit(lowest, highest);
        return fast.present() ? fast : pulses();
    }

    /** Short pulses hold little of their fundamental: their edges give the frequency, if all cycles are alike. */
    private Measured pulses() {
        Window all = Window.of(span);
        MeasurementPass extremes = new MeasurementPass();
        Peak peak = extremes.add(new Peak(all, extremes.channel(quantity)));
        Trough trough = extremes.add(new Trough(all, extremes.channel(quantity)));
        extremes.over(table);
        double swing = peak.result().value() - trough.result().value();
        MeasurementPass pass = new MeasurementPass();
        SwitchingFrequency edges = pass.add(new SwitchingFrequency(
                all, new Gate(pass.channel(quantity), trough.result().value() + swing / 2, HYSTERESIS * swing)));
        pass.over(table);
        Measured spread = edges.highest().with(edges.lowest(), (high, low) -> high / low);
        return spread.present() && spread.value() < ALIKE ? edges.result() : Measured.absent("no dominant frequency");
    }

    private Measured fit(double lowest, double highest) {
        MeasurementPass pass = new MeasurementPass();
        FundamentalFrequency fit =
                pass.add(new FundamentalFrequency(Window.of(span), pass.channel(quantity), lowest, highest));
        pass.over(table);
        return fit.result();
    }

    private static List<CaptureLimit> limits(Measured frequency, Measured depth) {
        if (!frequency.present() || !depth.present()) {
            String reason = frequency.present() ? depth.note() : frequency.note();
            return List.of(CaptureLimit.noVerdict("IEEE 1789-2015", reason));
        }
        return List.of(
                text(FlickerLimit.judgeLowRisk(frequency.value(), depth.value())),
                text(FlickerLimit.judgeNoEffect(frequency.value(), depth.value())));
    }

    private static CaptureLimit text(LimitVerdict verdict) {
        return CaptureLimit.of(
                verdict.rule(),
                verdict.pass(),
                PlainNumber.fixed(100 * verdict.value(), 2) + " %, limit " + PlainNumber.fixed(100 * verdict.limit(), 2)
                        + " %");
    }
}
