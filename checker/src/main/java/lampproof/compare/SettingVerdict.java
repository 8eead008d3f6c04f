package lampproof.compare;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The verdicts of the simulation of one setting of a dimmer.
 *
 * @param degrees conduction angle [deg]
 * @param run its verdicts
 */
public record SettingVerdict(double degrees, RunVerdict run) {

    /** A conduction angle [deg] as text, such as {@code 90} or {@code 12.5}. */
    public static String text(double degrees) {
        return degrees == Math.rint(degrees) ? Long.toString(Math.round(degrees)) : Double.toString(degrees);
    }

    /** The simulated value of a figure [unit of the figure]; empty when there is no valid one. */
    public OptionalDouble simulated(String figure) {
        Optional<Verdict> found = run.decks().stream()
                .flatMap(deck -> deck.verdicts().stream())
                .filter(verdict -> verdict.prediction().figure().name().equals(figure))
                .findFirst();
        return found.map(Verdict::simulated).orElse(OptionalDouble.empty());
    }
}
