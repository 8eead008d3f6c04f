package lampproof.capture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lampproof.measure.Channel;
import lampproof.measure.Clipping;
import lampproof.measure.DisplacementFactor;
import lampproof.measure.Harmonics;
import lampproof.measure.LineWindow;
import lampproof.measure.MeanProduct;
import lampproof.measure.Measured;
import lampproof.measure.MeasuringPass;
import lampproof.measure.Peak;
import lampproof.measure.PeakPoint;
import lampproof.measure.PeriodRms;
import lampproof.measure.PhaseMeans;
import lampproof.measure.PowerFactor;
import lampproof.measure.RootMeanSquare;
import lampproof.measure.Sampling;
import lampproof.measure.TotalHarmonicDistortion;
import lampproof.measure.Trough;
import lampproof.measure.Window;
import lampproof.waveform.Engineering;
import lampproof.waveform.Span;

/** Line voltage and current, or one of them, over the whole line periods of a stretch of time. */
final class LineCapture {

    private static final double STEADY = 0.05;
    private static final int PARTS = 360;
    private static final String TOO_FEW = "too few points in a line period";

    /** What swings by less than this share of its peak is direct. */
    private static final double DIRECT = 0.1;

    private final Sampling sampling;
    private final List<String> remarks;
    private final boolean voltage;
    private final boolean current;

    /** Whether the points do not follow the periods of the line; they then may not even tell that it is direct. */
    private final boolean coarse;

    private final Measured frequency;
    private final Window window;
    private final MeasuringPass pass;
    private final int highestOrder;
    private final Harmonics ofVoltage;
    private final Harmonics ofCurrent;
    private final RootMeanSquare rmsVoltage;
    private final RootMeanSquare rmsCurrent;
    private final Runnable basics;
    private final LineFlow flow;
    private final Peak highest;
    private final Trough lowest;
    private final List<CaptureFigure> figures = new ArrayList<>();

    /**
     * Adds what is to be measured to a pass.
     *
     * @param remarks takes what the user should know
     */
    LineCapture(MappedTable table, Survey survey, Span span, MeasuringPass pass, List<String> remarks) {
        sampling = survey.sampling();
        this.pass = pass;
        this.remarks = remarks;
        voltage = table.has(Quantity.LINE_VOLTAGE.word());
        current = table.has(Quantity.LINE_CURRENT.word());
        Measured found = survey.frequency((voltage ? Quantity.LINE_VOLTAGE : Quantity.LINE_CURRENT).word());
        coarse = !sampling.follows(found.present() ? found.value() : Survey.LOWEST_LINE);
        frequency = coarse ? Measured.absent(TOO_FEW) : found;
        window = frequency.present() ? LineWindow.last(span, frequency.value()) : Window.of(span);
        highestOrder = frequency.present()
                ? (int) Math.min(Harmonics.HIGHEST_ORDER, Math.rint(sampling.rate() / frequency.value() / 2) - 1)
                : 0;
        Channel leading = channel(voltage ? Quantity.LINE_VOLTAGE : Quantity.LINE_CURRENT);
        highest = pass.add(new Peak(window, leading));
        lowest = pass.add(new Trough(window, leading));
        ofVoltage = voltage ? spectrum(Quantity.LINE_VOLTAGE) : null;
        ofCurrent = current ? spectrum(Quantity.LINE_CURRENT) : null;
        rmsVoltage = voltage ? rms(Quantity.LINE_VOLTAGE) : null;
        rmsCurrent = current ? rms(Quantity.LINE_CURRENT) : null;
        basics = basics();
        flow = voltage && current ? flow() : null;
    }

    /** The figures, once the pass is over. */
    CaptureSection section() {
        figures.add(new CaptureFigure("line.frequency", "Hz", frequency));
        basics.run();
        if (voltage) {
            distortion("line.voltage", ofVoltage);
        }
        if (current) {
            distortion("line.current", ofCurrent);
            harmonics(ofCurrent);
        }
        if (voltage && current) {
            figures.add(new CaptureFigure(
                    "line.displacement_factor", "1", ofPeriods(DisplacementFactor.of(ofVoltage, ofCurrent))));
        }
        return new CaptureSection("line", window.text(), figures, limits());
    }

    private Channel channel(Quantity quantity) {
        return pass.channel(quantity.word());
    }

    private Harmonics spectrum(Quantity quantity) {
        return pass.add(new Harmonics(window, channel(quantity), frequency.present() ? frequency.value() : 1));
    }

    private RootMeanSquare rms(Quantity quantity) {
        return pass.add(new RootMeanSquare(window, channel(quantity)));
    }

    /** Prepares what needs no spectrum; the answer adds the figures once the pass is over. */
    private Runnable basics() {
        List<Runnable> figuresToAdd = new ArrayList<>();
        if (voltage) {
            figuresToAdd.add(() -> add("line.voltage.rms", "V", steady(rmsVoltage.result())));
            figuresToAdd.add(oddities(Quantity.LINE_VOLTAGE));
        }
        if (current) {
            figuresToAdd.add(current());
            figuresToAdd.add(oddities(Quantity.LINE_CURRENT));
        }
        if (voltage && current) {
            figuresToAdd.add(power());
        }
        return () -> figuresToAdd.forEach(Runnable::run);
    }

    private Runnable current() {
        Channel channel = channel(Quantity.LINE_CURRENT);
        Window all = Window.of(sampling.span());
        Peak peak = pass.add(new Peak(window, channel));
        Trough trough = pass.add(new Trough(window, channel));
        Peak inrush = pass.add(new Peak(all, channel));
        Trough inrushBelow = pass.add(new Trough(all, channel));
        return () -> {
            add("line.current.rms", "A", steady(rmsCurrent.result()));
            add("line.current.peak", "A", magnitude(peak, trough));
            add(
                    "line.current.inrush",
                    "A",
                    magnitude(inrush, inrushBelow).noted("greatest magnitude in the whole record"));
        };
    }

    private static Measured magnitude(Peak highest, Trough lowest) {
        return highest.result().with(lowest.result(), (high, low) -> Math.max(high, -low));
    }

    /** Prepares to look at a quantity point by point and period by period; the answer remarks what is odd in it. */
    private Runnable oddities(Quantity quantity) {
        PeriodRms periods = pass.add(new PeriodRms(window, channel(quantity)));
        PeakPoint peak = pass.add(new PeakPoint(Window.of(sampling.span()), channel(quantity)));
        Clipping clipping = pass.add(new Clipping(window, channel(quantity), true));
        return () -> {
            remarkUnsteady(quantity, periods);
            clipping.remark(quantity.word()).ifPresent(remarks::add);
            remarkLone(quantity, peak);
        };
    }

    private void remarkUnsteady(Quantity quantity, PeriodRms periods) {
        Measured change = periods.result();
        if (change.present() && change.value() > STEADY) {
            double[] rms = periods.levels();
            int odd = periods.farthest();
            remarks.add(quantity.word() + " is not steady: rms " + quantity.text(rms[odd]) + " in line period "
                    + (odd + 1) + ", " + quantity.text(rms[rms.length - 1])
                    + " in the last; choose a stretch with --from and --to");
        }
    }

    private void remarkLone(Quantity quantity, PeakPoint peak) {
        Measured size = peak.result();
        if (size.present() && peak.alone()) {
            remarks.add("the greatest " + quantity.word() + ", " + quantity.text(size.value()) + " at "
                    + Engineering.exact(peak.time(), "s") + ", stands on a single point, "
                    + Engineering.rounded(peak.width(), "s")
                    + " wide at half its height: figures that take it in hang on it");
        }
    }

    private Runnable power() {
        MeanProduct power =
                pass.add(new MeanProduct(window, channel(Quantity.LINE_VOLTAGE), channel(Quantity.LINE_CURRENT)));
        return () -> {
            Measured factor = PowerFactor.of(power.result(), rmsVoltage.result(), rmsCurrent.result());
            add("line.power.mean", "W", steady(power.result()));
            Measured apparent = factor.then(pf -> power.result().then(p -> Measured.ratio(p, pf, "no power flows")));
            add("line.power.apparent", "VA", steady(apparent));
            add("line.power_factor", "1", steady(factor));
        };
    }

    private void distortion(String name, Harmonics spectrum) {
        Measured thd = highestOrder < 2
                ? Measured.absent(TOO_FEW)
                : TotalHarmonicDistortion.of(spectrum, highestOrder)
                        .map(share -> 100 * share)
                        .noted("orders 2 to " + highestOrder);
        add(name + ".thd", "%", ofPeriods(thd));
    }

    private void harmonics(Harmonics spectrum) {
        IntStream.rangeClosed(2, highestOrder)
                .forEach(order -> add(
                        "line.current.harmonic." + order,
                        "%",
                        ofPeriods(spectrum.result()
                                .then(fundamental -> Measured.ratio(
                                        100 * spectrum.rms(order).value(), fundamental, "there is no fundamental")))));
    }

    /** What is taken over whole periods of an alternating line, or over any stretch of a direct one. */
    private Measured steady(Measured figure) {
        double swing = highest.result().value() - lowest.result().value();
        double most = Math.max(highest.result().value(), -lowest.result().value());
        return coarse || swing > DIRECT * most ? ofPeriods(figure) : figure;
    }

    private Measured ofPeriods(Measured figure) {
        return frequency.present() ? figure : frequency;
    }

    private LineFlow flow() {
        return frequency.present()
                ? new LineFlow(
                        pass.add(new PhaseMeans(window, channel(Quantity.LINE_CURRENT), PARTS)),
                        ofVoltage,
                        frequency.value())
                : null;
    }

    private List<CaptureLimit> limits() {
        return flow == null
                ? List.of()
                : List.of(HarmonicLimit.of(
                        figure("line.power.mean"), figure("line.power_factor"), ofCurrent, highestOrder, flow));
    }

    private Measured figure(String name) {
        return figures.stream()
                .filter(figure -> figure.name().equals(name))
                .map(CaptureFigure::value)
                .findFirst()
                .orElseThrow();
    }

    private void add(String name, String unit, Measured value) {
        figures.add(new CaptureFigure(name, unit, value));
    }
}
