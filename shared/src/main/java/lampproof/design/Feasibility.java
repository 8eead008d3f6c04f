package lampproof.design;

import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.spec.Amount;
import lampproof.spec.Spec;
import lampproof.unit.Engineering;

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
                    "a step-up string voltage must be above the crest of the highest line",
                    string,
                    "at least " + volts((1 + ROOM) * crest) + ", 5 % above the crest of " + volts(crest),
                    "raise string.voltage, or choose driver.topology step-down");
        }
    }

    private static void requireBelow(double string, double crest) {
        if (string > (1 - ROOM) * crest) {
            throw fault(
                    "a step-down string voltage must be below the crest of the lowest line",
                    string,
                    "at most " + volts((1 - ROOM) * crest) + ", 5 % below the crest of " + volts(crest),
                    "lower string.voltage, or choose driver.topology step-up");
        }
    }

    private static UserFault fault(String what, double found, String allowed, String next) {
        return UserFault.badInput(new Finding(what, "string.voltage", volts(found), allowed, next));
    }

    private static String volts(double voltage) {
        return Engineering.digits(4).text(voltage, "V");
    }
}
