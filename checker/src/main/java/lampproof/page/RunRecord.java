package lampproof.page;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lampproof.choice.PartTable;
import lampproof.compare.RunVerdict;
import lampproof.design.Design;
import lampproof.prediction.DeckKind;
import lampproof.prediction.LineCorners;
import lampproof.prediction.Prediction;
import lampproof.prediction.Solution;
import lampproof.rule.RuleJudgement;
import lampproof.rule.RuleVerdicts;
import lampproof.waveform.file.WaveformFile;

/**
 * All that the page of a run is made from.
 *
 * @param verdict what the simulations say
 * @param design the driver and where its values came from
 * @param corners its predicted steady states
 * @param parts the classes in which parts are sold
 * @param waves waveforms of the decks that have any
 * @param provenance who made it
 */
public record RunRecord(
        RunVerdict verdict,
        Design design,
        LineCorners corners,
        PartTable parts,
        Map<DeckKind, WaveformFile> waves,
        Provenance provenance) {

    /**
     * Who made the page.
     *
     * @param program name and version of this program
     * @param simulator name and version of the simulator; empty when unknown
     * @param date when the run was checked
     */
    public record Provenance(String program, String simulator, String date) {}

    /** Copies the waveforms. */
    public RunRecord {
        Map<DeckKind, WaveformFile> copy = new EnumMap<>(DeckKind.class);
        copy.putAll(waves);
        waves = copy;
    }

    /** A run of a design; its steady states are solved. */
    public static RunRecord of(
            RunVerdict verdict,
            Design design,
            PartTable parts,
            Map<DeckKind, WaveformFile> waves,
            Provenance provenance) {
        return new RunRecord(verdict, design, LineCorners.of(design), parts, waves, provenance);
    }

    /** The waveform of a deck, if there is one. */
    Optional<WaveformFile> wave(DeckKind deck) {
        return Optional.ofNullable(waves.get(deck));
    }

    /** The predicted steady state at the typical line voltage. */
    Solution solution() {
        return corners.nominal();
    }

    /** The verdict of each rule on the prediction, and on the simulation where a deck shows it. */
    public List<RuleJudgement> judgements() {
        return RuleVerdicts.of(corners, verdict::simulated);
    }

    /** The predicted value of a figure of the whole lamp, which no deck settles. */
    OptionalDouble predicted(String figure) {
        return predicted(Optional.empty(), figure);
    }

    /** The predicted value of a figure in a deck. */
    OptionalDouble predicted(DeckKind deck, String figure) {
        return predicted(Optional.of(deck), figure);
    }

    private OptionalDouble predicted(Optional<DeckKind> deck, String figure) {
        return verdict.verdicts().stream()
                .map(one -> one.prediction())
                .filter(prediction -> isOf(prediction, deck, figure))
                .mapToDouble(Prediction::value)
                .findFirst();
    }

    /** The simulated value of a figure in a deck. */
    OptionalDouble simulated(DeckKind deck, String figure) {
        return verdict.simulated(deck, figure);
    }

    private static boolean isOf(Prediction prediction, Optional<DeckKind> deck, String figure) {
        return prediction.deck().equals(deck) && prediction.figure().name().equals(figure);
    }
}
