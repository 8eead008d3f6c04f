package lampproof.page;

import java.util.List;
import java.util.Optional;
import lampproof.compare.DeckVerdict;
import lampproof.compare.TrustCheck;
import lampproof.waveform.file.WaveformFile;

/**
 * Whether the simulations of a run can be trusted.
 *
 * @param decks the decks that were looked at
 */
record TrustRows(List<Deck> decks) {

    /**
     * A deck.
     *
     * @param name its name
     * @param waves how its waveforms were read; empty without waveforms
     * @param checks what was checked
     */
    record Deck(String name, String waves, List<TrustCheck> checks) {}

    static TrustRows of(RunRecord run) {
        return new TrustRows(run.verdict().decks().stream()
                .map(deck -> deck(deck, run.wave(deck.deck())))
                .toList());
    }

    private static Deck deck(DeckVerdict deck, Optional<WaveformFile> waves) {
        return new Deck(deck.deck().word(), waves.map(WaveformFile::format).orElse(""), deck.trust());
    }
}
