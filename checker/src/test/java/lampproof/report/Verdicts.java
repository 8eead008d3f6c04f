package lampproof.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lampproof.compare.DeckVerdict;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.TrustCheck;
import lampproof.compare.Verdict;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Figure;
import lampproof.prediction.Grade;
import lampproof.prediction.Prediction;
import lampproof.prediction.Tolerance;

/** Five figures for the reports: three agree, one differs, one is not simulated. */
final class Verdicts {

    static final String NASTY = "R<1 & 2 \u03a9> \u0007";

    private Verdicts() {}

    static RunVerdict five() {
        List<Verdict> mains = List.of(
                verdict("line.power.mean", "W", 7.5, 7.512, Outcome.AGREES),
                verdict("line.power_factor", "1", 0.98, 0.979, Outcome.AGREES),
                verdict("switching.on_time", "s", 3.5e-6, 3.51e-6, Outcome.AGREES),
                verdict("inductor.current.peak", "A", 0.0925, 0.18, Outcome.DIFFERS));
        List<TrustCheck> trust = List.of(
                new TrustCheck("complete", true, "the record reaches 20.0 ms"),
                new TrustCheck("resolved", true, "79 steps in the on-time of 3.45 \u00b5s"));
        DeckVerdict deck = new DeckVerdict(DeckKind.MAINS, "0 s to 20 ms, 1 line period", trust, mains);
        Verdict none = new Verdict(
                prediction(NASTY, "h", 3e4, null),
                OptionalDouble.empty(),
                Outcome.PREDICTED_ONLY,
                "no deck settles it");
        return new RunVerdict(NASTY, List.of(deck), List.of(none), List.of());
    }

    static RunVerdict failed() {
        List<Prediction> predictions = List.of(prediction("line.power.mean", "W", 7.5, DeckKind.MAINS));
        return RunVerdict.of(
                "lamp",
                predictions,
                List.of(DeckVerdict.failed(DeckKind.MAINS, predictions, "=cmd|the simulator was stopped")));
    }

    private static Verdict verdict(String name, String unit, double predicted, double simulated, Outcome outcome) {
        return new Verdict(
                prediction(name, unit, predicted, DeckKind.MAINS), OptionalDouble.of(simulated), outcome, "");
    }

    private static Prediction prediction(String name, String unit, double value, DeckKind deck) {
        Figure figure = new Figure(name, "x", unit, Grade.MEAN, "", "", "");
        return new Prediction(figure, Corner.NOMINAL, Optional.ofNullable(deck), value, Tolerance.share(0.02));
    }
}
