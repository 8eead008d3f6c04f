package lampproof.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lampproof.measure.LineWindow;
import lampproof.measure.Window;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import lampproof.spec.Amount;
import lampproof.unit.Engineering;
import lampproof.unit.Prefix;
import lampproof.waveform.file.WaveformFile;

/** Waveforms of a fault, of a surge, of power-up, and of a line period behind the dimmer, with predicted peaks and ratings. */
final class EventPlots {

    private static final int TALL = 250;
    private static final double MILLISECOND = 1e-3;

    /**
     * A probe in a deck.
     *
     * @param probe the probe
     * @param title its name in words
     * @param figure predicted figure drawn as a level; empty for none
     * @param rating row of the spec with the rating drawn as a level; empty for none
     */
    private record Picture(Probe probe, String title, String figure, String rating) {}

    private static final Picture LINE_VOLTAGE = new Picture(Probe.LINE_VOLTAGE, "Line voltage", "", "");
    private static final Picture LINE_CURRENT =
            new Picture(Probe.LINE_CURRENT, "Line current", "line.current.peak", "");
    private static final Picture BUS_VOLTAGE =
            new Picture(Probe.BUS_VOLTAGE, "Bus voltage", "bus.voltage.peak", "bus.voltage_rating");
    private static final Picture SWITCH_VOLTAGE =
            new Picture(Probe.SWITCH_VOLTAGE, "Switch voltage", "switch.voltage.peak", "switch.voltage_rating");
    private static final Picture SWITCH_CURRENT =
            new Picture(Probe.SWITCH_CURRENT, "Switch current", "switch.current.peak", "switch.current_rating");
    private static final Picture INDUCTOR_CURRENT = new Picture(
            Probe.INDUCTOR_CURRENT, "Inductor current", "inductor.current.peak", "inductor.saturation_current");
    private static final Picture OUTPUT_VOLTAGE =
            new Picture(Probe.OUTPUT_VOLTAGE, "Output voltage", "output.voltage.peak", "output.voltage_rating");
    private static final Picture STRING_CURRENT =
            new Picture(Probe.STRING_CURRENT, "String current", "string.current.peak", "");

    /** The probes that show each event, in pairs that stand side by side. */
    static final Map<DeckKind, List<Picture>> PICTURES = Map.of(
            DeckKind.OPEN_STRING, List.of(OUTPUT_VOLTAGE, SWITCH_VOLTAGE),
            DeckKind.SHORTED_STRING, List.of(SWITCH_CURRENT, INDUCTOR_CURRENT),
            DeckKind.SURGE, List.of(LINE_VOLTAGE, LINE_CURRENT, BUS_VOLTAGE, SWITCH_VOLTAGE),
            DeckKind.POWER_UP, List.of(LINE_CURRENT, STRING_CURRENT),
            DeckKind.DIMMED, List.of(LINE_VOLTAGE, LINE_CURRENT, BUS_VOLTAGE, STRING_CURRENT));

    private final RunRecord run;
    private final DeckKind deck;

    EventPlots(RunRecord run, DeckKind deck) {
        this.run = run;
        this.deck = deck;
    }

    /**
     * The plots of a deck.
     *
     * @throws lampproof.fault.UserFault no verdict, when it cannot be read or is shorter than its window
     */
    List<PlotView> of(WaveformFile table) {
        List<Picture> pictures = PICTURES.get(deck);
        Window window = window(table);
        PixelColumns columns = new PixelColumns(window.start(), window.end(), Plot.COLUMNS, pictures.size());
        table.rows(pictures.stream().map(picture -> picture.probe().column()).toList(), columns);
        Function<Picture, Trace> traces = picture -> columns.trace(pictures.indexOf(picture));
        return pictures.stream()
                .map(picture -> view(picture, traces.apply(picture), window))
                .toList();
    }

    /** An event is drawn from its start to its end, what repeats over its last line period. */
    private Window window(WaveformFile table) {
        return deck.event()
                ? Window.of(table.span())
                : LineWindow.lastOrHalf(
                        table.span(), run.solution().driver().line().frequency());
    }

    private PlotView view(Picture picture, Trace trace, Window window) {
        String unit = picture.probe().unit();
        Plot plot = new Plot(deck.word() + "-" + picture.probe().column(), picture.title(), unit, TALL)
                .add(new Layer.Band(
                        "simulated", "simulated", new Trace(0, window.length(), trace.low(), trace.high())));
        run.predicted(deck, picture.figure())
                .ifPresent(peak -> plot.add(new Layer.Level("level", "predicted peak " + text(peak, unit), peak)));
        Optional.of(picture.rating())
                .filter(rating -> !rating.isEmpty())
                .flatMap(rating -> run.design().values().amount(rating))
                .map(Amount::typical)
                .ifPresent(rated -> plot.add(new Layer.Level("limit", "rating " + text(rated, unit), rated)));
        Axis time = Plot.across(0, window.length());
        return plot.view(time, window.length() < MILLISECOND ? Prefix.MICRO : Prefix.MILLI, "the deck " + deck.word());
    }

    private static String text(double value, String unit) {
        return Engineering.rounded(value, unit);
    }
}
