package lampproof.page;

import static lampproof.prediction.Probe.DIODE_CURRENT;
import static lampproof.prediction.Probe.GATE_VOLTAGE;
import static lampproof.prediction.Probe.INDUCTOR_CURRENT;
import static lampproof.prediction.Probe.SWITCH_CURRENT;
import static lampproof.prediction.Probe.SWITCH_VOLTAGE;

import java.util.List;
import java.util.stream.IntStream;
import lampproof.measure.Gate;
import lampproof.measure.LastPeriods;
import lampproof.measure.MeasurementPass;
import lampproof.measure.Window;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import lampproof.quasistatic.CellCycle;
import lampproof.unit.Engineering;
import lampproof.unit.Prefix;
import lampproof.waveform.file.WaveformFile;

/** The last switching cycles of a record at the crest of the line, with the predicted cycle drawn in. */
final class SwitchingPlots {

    private static final int CYCLES = 4;
    private static final double GATE_THRESHOLD = 0.5;
    private static final int TALL = 290;
    private static final List<Probe> PROBES = List.of(INDUCTOR_CURRENT, SWITCH_VOLTAGE, SWITCH_CURRENT, DIODE_CURRENT);

    private final RunRecord run;
    private final Window window;
    private final PixelColumns columns;
    private final Axis time;

    private SwitchingPlots(RunRecord run, Window window, PixelColumns columns) {
        this.run = run;
        this.window = window;
        this.columns = columns;
        this.time = Plot.across(0, window.length());
    }

    /**
     * The plots of a record.
     *
     * @throws lampproof.fault.UserFault no verdict, when it cannot be read or holds no whole switching cycle
     */
    static List<PlotView> of(RunRecord run, WaveformFile table) {
        MeasurementPass pass = new MeasurementPass();
        Gate gate = new Gate(pass.channel(GATE_VOLTAGE.column()), GATE_THRESHOLD);
        LastPeriods periods = pass.add(new LastPeriods(Window.of(table.span()), gate, CYCLES));
        pass.over(table);
        Window window = periods.found(1);
        PixelColumns columns = new PixelColumns(window.start(), window.end(), Plot.COLUMNS, PROBES.size());
        table.rows(PROBES.stream().map(Probe::column).toList(), columns);
        return new SwitchingPlots(run, window, columns).plots();
    }

    private List<PlotView> plots() {
        Plot inductor = plot("cycle-inductor", "Inductor current", "A", INDUCTOR_CURRENT)
                .add(ramps("predicted ramps", true, true));
        Plot voltage = plot("cycle-voltage", "Switch voltage", "V", SWITCH_VOLTAGE);
        Plot powerSwitch =
                plot("cycle-switch", "Switch current", "A", SWITCH_CURRENT).add(ramps("predicted ramp", true, false));
        Plot diode = plot("cycle-diode", "Diode current", "A", DIODE_CURRENT).add(ramps("predicted ramp", false, true));
        return List.of(
                view(level(inductor, "inductor.current.peak", "A")),
                view(level(voltage, "switch.voltage.peak", "V")),
                view(level(powerSwitch, "switch.current.peak", "A")),
                view(level(diode, "diode.current.peak", "A")));
    }

    private Plot plot(String id, String title, String unit, Probe probe) {
        return new Plot(id, title, unit, TALL).add(new Layer.Band("simulated", "simulated", trace(probe)));
    }

    private Plot level(Plot plot, String figure, String unit) {
        run.predicted(DeckKind.CREST, figure)
                .ifPresent(at -> plot.add(new Layer.Level(
                        "level", "predicted peak " + Engineering.digits(4).text(at, unit), at)));
        return plot;
    }

    /** The predicted ramps while the switch or the diode conducts, each cycle from a simulated turn-on, without the ring. */
    private Layer ramps(String legend, boolean rise, boolean fall) {
        CellCycle cycle = run.solution().operation().crest().cycle();
        double risen = cycle.onTime() + cycle.rise().time();
        double[] after = {0, cycle.onTime(), risen, risen + cycle.diode().time(), cycle.period()};
        double[] currents = {
            rise ? cycle.startCurrent() : Double.NaN,
            rise ? cycle.peakCurrent() : Double.NaN,
            fall ? cycle.diode().from() : Double.NaN,
            fall ? cycle.diode().to() : Double.NaN,
            Double.NaN
        };
        int corners = after.length;
        double[] times = IntStream.range(0, corners * window.periods())
                .mapToDouble(i -> window.period() * Math.floorDiv(i, corners) + after[i % corners])
                .toArray();
        double[] values = IntStream.range(0, times.length)
                .mapToDouble(i -> currents[i % corners])
                .toArray();
        return new Layer.Curve("predicted", legend, times, values);
    }

    private Trace trace(Probe probe) {
        Trace trace = columns.trace(PROBES.indexOf(probe));
        return new Trace(0, window.length(), trace.low(), trace.high());
    }

    private PlotView view(Plot plot) {
        String stretch = window.periods() + " switching cycles with the line held at its crest";
        return plot.view(time, Prefix.MICRO, stretch);
    }
}
