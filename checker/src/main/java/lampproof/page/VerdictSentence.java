package lampproof.page;

import java.util.Comparator;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.Verdict;
import lampproof.unit.PlainNumber;

/** What a run says, in one sentence. */
final class VerdictSentence {

    private VerdictSentence() {}

    static String of(RunVerdict run) {
        long agree = run.count(Outcome.AGREES);
        long differ = run.count(Outcome.DIFFERS);
        long without = run.count(Outcome.NO_VERDICT);
        long compared = agree + differ;
        String rest = run.count(Outcome.PREDICTED_ONLY) == 0
                ? "."
                : "; " + run.count(Outcome.PREDICTED_ONLY) + " more were not simulated.";
        return switch (run.worst()) {
            case AGREES ->
                (agree == 1 ? "The one figure compared agrees" : "All " + agree + " figures compared agree")
                        + " with the prediction" + closest(run) + rest;
            case DIFFERS ->
                differ + " of " + compared + " figures compared " + (differ == 1 ? "differs" : "differ")
                        + " from the prediction" + rest;
            case NO_VERDICT ->
                "No verdict on " + without + " of " + (compared + without)
                        + " figures, because a run cannot be trusted as it stands; " + agree + " agree and " + differ
                        + " differ" + rest;
            case PREDICTED_ONLY -> "Nothing has been compared: no figure was simulated.";
        };
    }

    /** The figure that uses most of its tolerance. */
    private static String closest(RunVerdict run) {
        return run.verdicts().stream()
                .filter(one ->
                        one.simulated().isPresent() && one.prediction().deck().isPresent())
                .max(Comparator.comparingDouble(VerdictSentence::share))
                .map(one -> "; nearest to its limit comes "
                        + one.prediction().figure().name() + " of the deck "
                        + one.prediction().deck().orElseThrow().word() + ", with " + PlainNumber.percent(share(one), 0)
                        + " of the deviation it is allowed")
                .orElse("");
    }

    private static double share(Verdict one) {
        double predicted = one.prediction().value();
        double deviation = Math.abs(one.simulated().getAsDouble() - predicted);
        return deviation / one.allowed();
    }
}
