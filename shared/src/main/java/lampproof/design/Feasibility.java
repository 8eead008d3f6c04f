package lampproof.design;

import java.util.Locale;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.spec.Amount;
import lampproof.spec.Spec;

/** Rejects what physics forbids, with the numbers and the nearest change that would work. */
final class Feasibility {

    /** A step-up converter must lift by a little at least, and a step-down converter needs some line above the string. */
    private static final double ROOM = 0.05;

    private Feasibility() {}

    /**
     * Checks the string against the line.
     *
     * @throws UserFault when the converter cannot work
     */
    static void require(Spec spec) {
        Amount line = spec.amount("line.voltage").orElseThrow();
        double string = spec.amount("string.voltage").orElseThrow().typical();
        boolean stepUp = spec.word("driver.topology").orElseThrow().equals("step-up");
        if (stepUp) {
            requireAbove(string, Math.sqrt(2) * line.most());
        } else {
            requireBelow(string, Math.sqrt(2) * line.least());
        }
    }

    private static void requireAbove(double string, double crest) {
        if (string < (1 + ROOM) * crest) {
            throw fault(
                    "a step-up string must stand above the crest of the highest line",
                    string,
                    String.format(
                            Locale.ROOT, "at least %.4g V, 5 %% above the crest of %.4g V", (1 + ROOM) * crest, crest),
                    "raise string.voltage, or take driver.topology step-down");
        }
    }

    private static void requireBelow(double string, double crest) {
        if (string > (1 - ROOM) * crest) {
            throw fault(
                    "a step-down string must stay below the crest of the lowest line",
                    string,
                    String.format(
                            Locale.ROOT, "at most %.4g V, 5 %% below the crest of %.4g V", (1 - ROOM) * crest, crest),
                    "lower string.voltage, or take driver.topology step-up");
        }
    }

    private static UserFault fault(String what, double found, String allowed, String next) {
        String value = String.format(Locale.ROOT, "%.4g V", found);
        return UserFault.badInput(new Finding(what, "string.voltage", value, allowed, next));
    }
}
