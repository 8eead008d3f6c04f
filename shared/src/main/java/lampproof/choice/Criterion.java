package lampproof.choice;

import java.util.function.ToDoubleFunction;
import lampproof.spec.Keyword;

/** What candidates are weighted by; of each burden less is better. */
public enum Criterion implements Keyword {
    /** Loss for each watt of the string [-]. */
    EFFICIENCY(
            "efficiency",
            "loss over string power",
            candidate -> candidate.solution().losses().total()
                    / candidate.solution().string().power()),
    /** Board that the parts cover [m2]. */
    AREA("board area", "board area", candidate -> candidate.bill().area()),
    /** Cost points of the parts [-]. */
    COST("cost", "cost points", candidate -> candidate.bill().cost()),
    /** Percent flicker [-]; what is below a thousandth counts as a thousandth. */
    FLICKER(
            "percent flicker",
            "percent flicker",
            candidate -> Math.max(1e-3, candidate.solution().string().percentFlicker())),
    /** One over the life of what goes first [1/h]. */
    LIFE("life of what goes first", "one over the hours of life", candidate -> 1 / candidate.life());

    private final String characteristic;
    private final String meaning;
    private final ToDoubleFunction<Candidate> burden;

    Criterion(String characteristic, String meaning, ToDoubleFunction<Candidate> burden) {
        this.characteristic = characteristic;
        this.meaning = meaning;
        this.burden = burden;
    }

    /** Name of the characteristic that shows it. */
    public String characteristic() {
        return characteristic;
    }

    /** What counts against a candidate, in words. */
    public String meaning() {
        return meaning;
    }

    /** What counts against a candidate [unit of the criterion]; above zero. */
    double burden(Candidate candidate) {
        return burden.applyAsDouble(candidate);
    }
}
