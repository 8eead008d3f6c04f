package lampproof.page;

import java.util.List;
import java.util.function.BiFunction;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.waveform.file.WaveformFile;

/**
 * The waveforms of a run.
 *
 * @param lineCycle over the line cycle
 * @param switching over the last switching cycles at the crest of the line
 */
record Waveforms(Pictures lineCycle, Pictures switching) {

    /**
     * The plots of a deck.
     *
     * @param plots from top to bottom
     * @param missing why there is none; empty otherwise
     */
    record Pictures(List<PlotView> plots, String missing) {

        static Pictures missing(String why) {
            return new Pictures(List.of(), why);
        }
    }

    /** Waveforms that cannot be read are left out, with the reason. */
    static Waveforms of(RunRecord run) {
        return new Waveforms(
                pictures(run, DeckKind.MAINS, LineCyclePlots::of), pictures(run, DeckKind.CREST, SwitchingPlots::of));
    }

    private static Pictures pictures(
            RunRecord run, DeckKind deck, BiFunction<RunRecord, WaveformFile, List<PlotView>> drawing) {
        return run.wave(deck)
                .map(table -> pictures(run, deck, table, drawing))
                .orElseGet(() -> Pictures.missing("There is no waveform of the deck " + deck.word() + "."));
    }

    private static Pictures pictures(
            RunRecord run,
            DeckKind deck,
            WaveformFile table,
            BiFunction<RunRecord, WaveformFile, List<PlotView>> drawing) {
        try {
            return new Pictures(drawing.apply(run, table), "");
        } catch (UserFault fault) {
            return Pictures.missing(
                    "The waveform of the deck " + deck.word() + " cannot be drawn: " + fault.getMessage());
        }
    }
}
