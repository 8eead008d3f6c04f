package lampproof.spec;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Common words for a converter, and the word of {@code driver.topology} to write instead. */
final class ConverterWord {

    /** The row of the converter. */
    static final String ROW = "driver.topology";

    private static final String DOWN = "step-down";
    private static final String UP = "step-up";

    private static final Map<String, String> SYNONYMS = Map.of(
            "stepdown",
            DOWN,
            "down",
            DOWN,
            "buck",
            DOWN, //
            "stepup",
            UP,
            "up",
            UP,
            "boost",
            UP);

    private static final Set<String> OTHERS = Set.of(
            "buckboost",
            "flyback",
            "forward",
            "sepic",
            "cuk",
            "zeta",
            "halfbridge",
            "fullbridge",
            "pushpull",
            "llc",
            "resonant",
            "inverting",
            "linear");

    private ConverterWord() {}

    /** The advice for a word that is not allowed; empty if the word is not a converter. */
    static Optional<String> advice(String word) {
        String letters = word.toLowerCase(Locale.ROOT).replaceAll("[ _-]+|converter|topology", "");
        if (OTHERS.contains(letters)) {
            return Optional.of("lampproof has no " + word + " converter: write step-down or step-up");
        }
        return Optional.ofNullable(SYNONYMS.get(letters))
                .map(known -> letters.startsWith("b")
                        ? letters + " is the common name of " + known + ": write " + known
                        : "write " + known);
    }
}
