package lampproof.choice;

import java.util.Locale;
import lampproof.design.Law;
import lampproof.design.Smoothing;
import lampproof.design.Topology;

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

    /** The arrangement in words. */
    public String text() {
        return String.format(
                Locale.ROOT,
                "%s %s, string of %.4g V and %.4g mA, %s ripple smoothed",
                topology.word(),
                law.word(),
                voltage,
                1e3 * current,
                smoothing.word());
    }

    static double fourDigits(double value) {
        return Double.parseDouble(String.format(Locale.ROOT, "%.3e", value));
    }
}
