package lampproof.page;

import static lampproof.prediction.Probe.BUS_VOLTAGE;
import static lampproof.prediction.Probe.DIODE_CURRENT;
import static lampproof.prediction.Probe.INDUCTOR_CURRENT;
import static lampproof.prediction.Probe.LINE_CURRENT;
import static lampproof.prediction.Probe.LINE_VOLTAGE;
import static lampproof.prediction.Probe.STRING_CURRENT;
import static lampproof.prediction.Probe.SWITCH_CURRENT;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import lampproof.measure.LineWindow;
import lampproof.measure.Window;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import lampproof.quasistatic.AnglePoint;
import lampproof.unit.Engineering;
import lampproof.unit.Prefix;
import lampproof.waveform.file.WaveformFile;

/** Voltages and currents over the last line period of a record, or half of one, with the predicted ones drawn in. */
final class LineCyclePlots {

    private static final int TALL = 290;
    private static final List<Probe> PROBES = List.of(
            LINE_VOLTAGE, LINE_CURRENT, BUS_VOLTAGE, INDUCTOR_CURRENT, SWITCH_CURRENT, DIODE_CURRENT, STRING_CURRENT);
    private static final String OVER_CYCLE = "predicted mean of each cycle";

    private final RunRecord run;
    private final Window window;
    private final Axis time;
    private final PixelColumns columns;
    private final int first;
    private final double[] times;

    private LineCyclePlots(RunRecord run, Window window, PixelColumns columns) {
        this.run = run;
        this.window = window;
        this.columns = columns;
        this.time = Plot.across(0, window.length());
        double angularFrequency = run.solution().driver().line().angularFrequency();
        double phase = trace(LINE_VOLTAGE).phase(angularFrequency * window.length());
        double step = Math.PI / points().size();
        this.first = (int) Math.ceil(phase / step - 0.5);
        this.times = new double[(int) Math.round(angularFrequency * window.length() / step)];
        for (int k = 0; k < times.length; k++) {
            times[k] = (step * (first + k + 0.5) - phase) / angularFrequency;
        }
    }

    /**
     * The plots of a record.
     *
     * @throws lampproof.fault.UserFault no verdict, when it cannot be read or holds not even half a line period
     */
    static List<PlotView> of(RunRecord run, WaveformFile table) {
        Window window = LineWindow.lastOrHalf(
                table.span(), run.solution().driver().line().frequency());
        PixelColumns columns = new PixelColumns(window.start(), window.end(), Plot.COLUMNS, PROBES.size());
        table.rows(PROBES.stream().map(Probe::column).toList(), columns);
        return new LineCyclePlots(run, window, columns).plots();
    }

    private List<PlotView> plots() {
        return List.of(
                view(voltages()),
                view(lineCurrent()),
                view(inductorCurrent()),
                view(stringCurrent()),
                view(cellCurrent("switch", "Switch current", SWITCH_CURRENT)),
                view(cellCurrent("diode", "Diode current", DIODE_CURRENT)));
    }

    private Plot voltages() {
        return level(
                new Plot("voltages", "Line voltage and bus voltage", "V", TALL)
                        .add(new Layer.Band("second", "line, simulated", trace(LINE_VOLTAGE)))
                        .add(new Layer.Band("simulated", "bus, simulated", trace(BUS_VOLTAGE)))
                        .add(curve("predicted", "bus, " + OVER_CYCLE, AnglePoint::busVoltage)),
                "bus.voltage.peak",
                "predicted bus peak");
    }

    private Plot lineCurrent() {
        return level(
                new Plot("line-current", "Line current", "A", TALL)
                        .add(new Layer.Band("simulated", "simulated", trace(LINE_CURRENT)))
                        .add(alternating("predicted", OVER_CYCLE, AnglePoint::lineCurrent)),
                "line.current.peak",
                "predicted peak");
    }

    private Plot inductorCurrent() {
        return level(
                new Plot("inductor-current", "Inductor current", "A", TALL)
                        .add(new Layer.Band("simulated", "simulated", trace(INDUCTOR_CURRENT)))
                        .add(curve("predicted", "predicted peak of each cycle", LineCyclePlots::top))
                        .add(curve("predicted", "", LineCyclePlots::trough)),
                "inductor.current.peak",
                "greatest predicted peak");
    }

    /** Switch and diode carry the peak of the inductor current in turn. */
    private Plot cellCurrent(String part, String title, Probe probe) {
        return level(
                new Plot(part + "-current", title, "A", TALL)
                        .add(new Layer.Band("simulated", "simulated", trace(probe)))
                        .add(curve("predicted", "predicted peak of each cycle", LineCyclePlots::top)),
                part + ".current.peak",
                "greatest predicted peak");
    }

    private Plot stringCurrent() {
        Plot plot = new Plot("string-current", "String current", "A", TALL)
                .add(new Layer.Band("simulated", "simulated", trace(STRING_CURRENT)))
                .add(curve("predicted", OVER_CYCLE, AnglePoint::stringCurrent));
        return level(level(plot, "string.current.peak", "predicted peak"), "string.current.mean", "predicted mean");
    }

    private Plot level(Plot plot, String figure, String words) {
        OptionalDouble value = run.predicted(DeckKind.MAINS, figure);
        value.ifPresent(at -> plot.add(
                new Layer.Level("level", words + " " + Engineering.digits(4).text(at, unit(figure)), at)));
        return plot;
    }

    private static String unit(String figure) {
        return figure.contains("voltage") ? "V" : "A";
    }

    private Layer curve(String kind, String legend, ToDoubleFunction<AnglePoint> value) {
        return new Layer.Curve(kind, legend, times, values(value, 1));
    }

    private Layer alternating(String kind, String legend, ToDoubleFunction<AnglePoint> value) {
        return new Layer.Curve(kind, legend, times, values(value, -1));
    }

    /** Half cycles one after the other, every second one with a sign. */
    private double[] values(ToDoubleFunction<AnglePoint> value, int sign) {
        double[] values = new double[times.length];
        for (int k = 0; k < values.length; k++) {
            int half = Math.floorDiv(first + k, points().size());
            int place = Math.floorMod(first + k, points().size());
            values[k] = (half % 2 == 0 ? 1 : sign) * value.applyAsDouble(points().get(place));
        }
        return values;
    }

    private static double top(AnglePoint point) {
        return point.cycle() == null ? 0 : point.cycle().topCurrent();
    }

    private static double trough(AnglePoint point) {
        return point.cycle() == null ? 0 : point.cycle().trough();
    }

    private List<AnglePoint> points() {
        return run.solution().operation().points();
    }

    private Trace trace(Probe probe) {
        return shifted(columns.trace(PROBES.indexOf(probe)));
    }

    /** The picture starts at time zero. */
    private static Trace shifted(Trace trace) {
        return new Trace(0, trace.end() - trace.start(), trace.low(), trace.high());
    }

    private PlotView view(Plot plot) {
        return plot.view(time, Prefix.MILLI, "one " + window.what());
    }
}
