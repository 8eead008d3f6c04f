package lampproof.page;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import lampproof.compare.DeckVerdict;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.TrustCheck;
import lampproof.compare.Verdict;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.unit.PlainNumber;

/**
 * The verdict of a run.
 *
 * @param agrees whether every compared figure agrees
 * @param sentence the verdict in one sentence
 * @param reasons each figure that differs, and each check of a deck that failed
 */
record VerdictSentence(boolean agrees, String sentence, List<String> reasons) {

    static VerdictSentence of(RunVerdict run) {
        return new VerdictSentence(run.worst() == Outcome.AGREES, sentence(run), reasons(run));
    }

    private static String sentence(RunVerdict run) {
        long agree = run.count(Outcome.AGREES);
        long differ = run.count(Outcome.DIFFERS);
        long without = run.count(Outcome.NO_VERDICT);
        String agreeing = agree + " of " + (agree + differ + without) + " simulated figures agree";
        return switch (run.worst()) {
            case AGREES -> agreeing + nearest(run) + ".";
            case DIFFERS -> agreeing + ", " + differ + (differ == 1 ? " differs." : " differ.");
            case NO_VERDICT ->
                agreeing + ", " + differ + (differ == 1 ? " differs, " : " differ, ") + without
                        + (without == 1 ? " has" : " have") + " no verdict.";
            case PREDICTED_ONLY -> "No figure was simulated.";
        };
    }

    /** The figure that uses most of its tolerance. */
    private static String nearest(RunVerdict run) {
        return run.verdicts().stream()
                .filter(one ->
                        one.simulated().isPresent() && one.prediction().deck().isPresent())
                .max(Comparator.comparingDouble(VerdictSentence::share))
                .map(one -> "; nearest to its limit: " + name(one.prediction()) + " at "
                        + PlainNumber.percent(share(one), 0))
                .orElse("");
    }

    private static double share(Verdict one) {
        double deviation =
                Math.abs(one.simulated().getAsDouble() - one.prediction().value());
        return deviation / one.allowed();
    }

    private static List<String> reasons(RunVerdict run) {
        Stream<String> differing = run.verdicts().stream()
                .filter(one -> one.outcome() == Outcome.DIFFERS)
                .map(VerdictSentence::difference);
        Stream<String> failed = run.decks().stream()
                .flatMap(deck ->
                        deck.trust().stream().filter(check -> !check.passed()).map(check -> failure(deck, check)));
        return Stream.concat(failed, differing).toList();
    }

    private static String failure(DeckVerdict deck, TrustCheck check) {
        return "deck " + deck.deck().word() + ": " + check.name() + ", " + check.text();
    }

    private static String difference(Verdict one) {
        ColumnText text = ColumnText.about(
                one.prediction().value(), one.prediction().figure().unit());
        String deviation = ColumnText.deviation(one);
        return name(one.prediction()) + ": predicted "
                + text.text(one.prediction().value()) + ", simulated "
                + text.text(one.simulated().orElse(Double.NaN))
                + (deviation.isEmpty() ? "" : " (" + deviation + ")")
                + (one.reason().isEmpty() ? "" : "; " + one.reason());
    }

    private static String name(Prediction prediction) {
        return prediction.figure().name()
                + prediction
                        .deck()
                        .map(DeckKind::word)
                        .map(deck -> " of deck " + deck)
                        .orElse("");
    }
}
