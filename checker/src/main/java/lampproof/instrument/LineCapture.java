package lampproof.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.measure.DisplacementFactor;
import lampproof.measure.Harmonics;
import lampproof.measure.LineWindow;
import lampproof.measure.MeanProduct;
import lampproof.measure.Measured;
import lampproof.measure.MeasurementPass;
import lampproof.measure.PhaseMeans;
import lampproof.measure.PowerFactor;
import lampproof.measure.Sampling;
import lampproof.measure.TotalHarmonicDistortion;
import lampproof.measure.Window;
import lampproof.waveform.Span;

/** Line voltage and current, or one of them, over the whole line periods of a stretch of time. */
final class LineCapture {

    private static final int PARTS = 360;
    private static final String TOO_FEW = "too few points in a line period";

    private final MappedTable table;
    private final MeasurementPass pass;
    private final List<String> remarks;

    /** Whether the points do not follow the periods of the line; they may then not even show that it is direct. */
    private final boolean coarse;

    private final Measured frequency;
    private final Window window;
    private final Window record;
    private final int highestOrder;
    private final Optional<LineQuantity> voltage;
    private final Optional<LineQuantity> current;
    private final Optional<MeanProduct> power;
    private final Optional<LineFlow> flow;
    private final List<CaptureFigure> figures = new ArrayList<>();

    /**
     * Adds the measurements to a pass.
     *
     * @param remarks receives remarks for the user
     */
    LineCapture(MappedTable table, Survey survey, Span span, MeasurementPass pass, List<String> remarks) {
        this.table = table;
        this.pass = pass;
        this.remarks = remarks;
        Sampling sampling = survey.sampling();
        Measured found = survey.frequency(reference().word());
        coarse = !sampling.follows(found.present() ? found.value() : Survey.LOWEST_LINE);
        frequency = coarse ? Measured.absent(TOO_FEW) : found;
        window = frequency.present() ? LineWindow.last(span, frequency.value()) : Window.of(span);
        record = Window.of(sampling.span());
        highestOrder = frequency.present()
                ? (int) Math.min(Harmonics.HIGHEST_ORDER, Math.rint(sampling.rate() / frequency.value() / 2) - 1)
                : 0;
        voltage = quantity(CaptureQuantity.LINE_VOLTAGE);
        current = quantity(CaptureQuantity.LINE_CURRENT);
        power = voltage.isPresent() && current.isPresent() ? Optional.of(product()) : Optional.empty();
        flow = power.isPresent() && frequency.present() ? Optional.of(flow()) : Optional.empty();
    }

    /** The figures after the pass. */
    CaptureSection section() {
        figures.add(new CaptureFigure("line.frequency", "Hz", frequency));
        voltage.ifPresent(v -> add("line.voltage.rms", "V", steady(v.rms())));
        current.ifPresent(this::sizes);
        power.ifPresent(this::powers);
        voltage.ifPresent(v -> distortion("line.voltage", v.spectrum()));
        current.ifPresent(i -> distortion("line.current", i.spectrum()));
        current.ifPresent(i -> harmonics(i.spectrum()));
        power.ifPresent(p -> add("line.displacement_factor", "1", ofPeriods(displacement())));
        Stream.concat(voltage.stream(), current.stream())
                .map(LineQuantity::remarks)
                .forEach(remarks::addAll);
        return new CaptureSection(
                "line", window.text(), figures, flow.map(this::limit).stream().toList());
    }

    private CaptureQuantity reference() {
        return table.has(CaptureQuantity.LINE_VOLTAGE.word())
                ? CaptureQuantity.LINE_VOLTAGE
                : CaptureQuantity.LINE_CURRENT;
    }

    private Optional<LineQuantity> quantity(CaptureQuantity quantity) {
        return table.has(quantity.word())
                ? Optional.of(
                        new LineQuantity(quantity, pass, window, record, frequency.present() ? frequency.value() : 1))
                : Optional.empty();
    }

    private MeanProduct product() {
        return pass.add(new MeanProduct(
                window,
                pass.channel(CaptureQuantity.LINE_VOLTAGE.word()),
                pass.channel(CaptureQuantity.LINE_CURRENT.word())));
    }

    private LineFlow flow() {
        PhaseMeans means = pass.add(new PhaseMeans(window, pass.channel(CaptureQuantity.LINE_CURRENT.word()), PARTS));
        return new LineFlow(means, voltage.orElseThrow().spectrum(), frequency.value());
    }

    private void sizes(LineQuantity current) {
        add("line.current.rms", "A", steady(current.rms()));
        add("line.current.peak", "A", current.peak());
        add("line.current.inrush", "A", current.greatest().noted("greatest magnitude in the whole record"));
    }

    private void powers(MeanProduct mean) {
        Measured power = mean.result();
        Measured factor = PowerFactor.of(
                power, voltage.orElseThrow().rms(), current.orElseThrow().rms());
        add("line.power.mean", "W", steady(power));
        Measured apparent = factor.then(pf -> power.then(p -> Measured.ratio(p, pf, "no power flows")));
        add("line.power.apparent", "VA", steady(apparent));
        add("line.power_factor", "1", steady(factor));
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

    private Measured displacement() {
        return DisplacementFactor.of(
                voltage.orElseThrow().spectrum(), current.orElseThrow().spectrum());
    }

    /** What is measured over whole periods of an alternating line, or over any window of a direct one. */
    private Measured steady(Measured figure) {
        boolean direct = !coarse && voltage.or(() -> current).orElseThrow().direct();
        return direct ? figure : ofPeriods(figure);
    }

    private Measured ofPeriods(Measured figure) {
        return frequency.present() ? figure : frequency;
    }

    private CaptureLimit limit(LineFlow flow) {
        return HarmonicLimit.of(
                figure("line.power.mean"),
                figure("line.power_factor"),
                current.orElseThrow().spectrum(),
                highestOrder,
                flow);
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
