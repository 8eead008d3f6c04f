package lampproof.compare;

import lampproof.unit.PlainNumber;

/**
 * A condition that a simulation must satisfy before its figures are compared.
 *
 * @param name the condition, in a word
 * @param passed whether it holds
 * @param text what was found, with the limit
 */
public record TrustCheck(String name, boolean passed, String text) {

    static TrustCheck of(String name, boolean passed, String text) {
        return new TrustCheck(name, passed, text);
    }

    static TrustCheck passed(String name, String text) {
        return new TrustCheck(name, true, text);
    }

    static TrustCheck failed(String name, String text) {
        return new TrustCheck(name, false, text);
    }

    /** A share in per cent, without a sign before zero. */
    static String percent(double share) {
        return PlainNumber.fixed(Math.rint(1e4 * share) / 1e2 + 0.0, 2) + " %";
    }
}
