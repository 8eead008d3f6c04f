package lampproof.page;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.waveform.file.WaveformFile;

/**
 * Waveforms of a run, deck by deck.
 *
 * @param decks the decks
 */
record Waveforms(List<Deck> decks) {

    /**
     * The plots of a deck.
     *
     * @param title what the deck shows
     * @param plots from top to bottom
     * @param missing why there is none; empty otherwise
     */
    record Deck(String title, List<PlotView> plots, String missing) {}

    /** The steady state; waveforms that cannot be read are left out, with the reason. */
    static Waveforms of(RunRecord run) {
        return new Waveforms(List.of(
                deck(run, DeckKind.MAINS, "Line cycle", table -> LineCyclePlots.of(run, table)),
                deck(
                        run,
                        DeckKind.CREST,
                        "Switching cycles at the crest of the line",
                        table -> SwitchingPlots.of(run, table))));
    }

    /** Faults, surge, power-up and dimming, as far as their decks ran. */
    static Waveforms ofEvents(RunRecord run) {
        return new Waveforms(Stream.of(DeckKind.values())
                .filter(EventPlots.PICTURES::containsKey)
                .filter(deck -> run.wave(deck).isPresent())
                .map(deck -> deck(run, deck, title(deck), new EventPlots(run, deck)::of))
                .toList());
    }

    private static String title(DeckKind deck) {
        return switch (deck) {
            case OPEN_STRING -> "Open string";
            case SHORTED_STRING -> "Shorted string";
            case SURGE -> "Surge";
            case POWER_UP -> "Power-up";
            case DIMMED -> "Dimmed";
            case CREST, MAINS, NOISE -> throw new IllegalArgumentException(deck.word() + " shows no event");
        };
    }

    private static Deck deck(
            RunRecord run, DeckKind deck, String title, Function<WaveformFile, List<PlotView>> drawing) {
        return run.wave(deck)
                .map(table -> drawn(deck, title, table, drawing))
                .orElseGet(() -> new Deck(title, List.of(), "There is no waveform of the deck " + deck.word() + "."));
    }

    private static Deck drawn(
            DeckKind deck, String title, WaveformFile table, Function<WaveformFile, List<PlotView>> drawing) {
        try {
            return new Deck(title, drawing.apply(table), "");
        } catch (UserFault fault) {
            return new Deck(
                    title,
                    List.of(),
                    "The waveform of the deck " + deck.word() + " cannot be drawn: " + fault.getMessage());
        }
    }
}
