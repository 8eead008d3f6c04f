package lampproof.rule;

import lampproof.spec.Vocabulary;
import lampproof.unit.PlainNumber;
import lampproof.unit.QuantityWriter;

/**
 * A rating or limit of a part, and the use that comes closest to what is allowed of it.
 *
 * @param name name of the rating in a spec
 * @param rated the rating [V] or [A]
 * @param used the greatest use [V] or [A]
 * @param allowed share of the rating that this kind of use may take [-]
 * @param when when it is used like that
 */
public record RatedUse(String name, double rated, double used, double allowed, String when) {

    /** The rating over the use, less one [-]; negative beyond the rating. */
    public double margin() {
        return rated / used - 1;
    }

    /** How much of what is allowed is taken [-]. */
    public double utilisation() {
        return used / rated / allowed;
    }

    /** The same use as a simulation shows it [V] or [A]. */
    RatedUse simulatedAs(double shown) {
        return new RatedUse(name, rated, shown, allowed, when);
    }

    /** Whether the use stays within what is allowed. */
    RuleVerdict verdict() {
        String found = PlainNumber.percent(used / rated, 0) + " of "
                + QuantityWriter.text(Vocabulary.quantity(name).dimension(), rated) + " " + when;
        return new RuleVerdict(
                name,
                utilisation() <= 1,
                "derated in use, whole in faults and surges, common practice",
                found,
                "at most " + PlainNumber.percent(allowed, 0));
    }
}
