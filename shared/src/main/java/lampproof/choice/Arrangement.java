package lampproof.choice;

import lampproof.design.Law;
import lampproof.design.Smoothing;
import lampproof.design.Topology;
import lampproof.unit.Decimal;
import lampproof.unit.Engineering;

/**
 * What distinguishes one candidate from another.
 *
 * @param topology the converter
 * @param law its control law
 * @param smoothing which ripple of the string current its output capacitor is chosen for
 * @param junctions LED junctions in series
 * @param voltage string voltage [V]
 * @param current string current [A]
 */
public record Arrangement(
        Topology topology, Law law, Smoothing smoothing, int junctions, double voltage, double current) {

    private static final Engineering FOUR_DIGITS = Engineering.digits(4).inAscii();

    /** The arrangement in words. */
    public String text() {
        return topology.word() + " " + law.word() + ", string of " + string() + ", " + smoothing.word()
                + " ripple smoothed";
    }

    /** The string in words. */
    String string() {
        return FOUR_DIGITS.text(voltage, "V") + " and " + FOUR_DIGITS.text(current, "A");
    }

    static double fourDigits(double value) {
        return Decimal.of(value).rounded(4).value();
    }
}
