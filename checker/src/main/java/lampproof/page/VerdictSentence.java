package lampproof.page;

import java.util.Comparator;
import java.util.Locale;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.Verdict;

/** What a run says, in one sentence. */
final class VerdictSentence {

    private VerdictSentence() {}

    static String of(RunVerdict run) {
        long agree = run.count(Outcome.AGREES);
        long differ = run.count(Outcome.DIFFERS);
        long without = run.count(Outcome.NO_VERDICT);
        long compared = agree + differ;
        String rest = run.count(Outcome.NOT_SIMULATED) == 0
                ? "."
                : "; " + run.count(Outcome.NOT_SIMULATED) + " more were not simulated.";
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
            case NOT_SIMULATED -> "Nothing has been compared: no figure was simulated.";
        };
    }

    /** The figure that takes the most of what it is allowed. */
    private static String closest(RunVerdict run) {
        return run.verdicts().stream()
                .filter(one ->
                        one.simulated().isPresent() && one.prediction().deck().isPresent())
                .max(Comparator.comparingDouble(VerdictSentence::share))
                .map(one -> String.format(
                        Locale.ROOT,
                        "; nearest to its limit comes %s of the deck %s, with %.0f %% of the deviation it is allowed",
                        one.prediction().figure().name(),
                        one.prediction().deck().orElseThrow().word(),
                        100 * share(one)))
                .orElse("");
    }

    private static double share(Verdict one) {
        double predicted = one.prediction().value();
        double deviation = Math.abs(one.simulated().getAsDouble() - predicted);
        return deviation / one.allowed();
    }
}
