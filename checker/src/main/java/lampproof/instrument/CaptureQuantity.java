package lampproof.instrument;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;
import lampproof.waveform.Signal;

/** A quantity that a table without a spec can show, and how its column is recognised. */
public enum CaptureQuantity {
    /** Line voltage [V]. */
    LINE_VOLTAGE("line.voltage", "V", "v|u|volts?|voltage|spannung|tension|(line|mains).?voltage"),
    /** Line current [A]. */
    LINE_CURRENT("line.current", "A", "i|amps?|amperes?|current|strom|courant|(line|mains).?current"),
    /** Light, in any unit [own unit]. */
    LIGHT("light", "lx", ".*(light|lux|photo|licht|lumi|flicker).*"),
    /** String current, which light follows [A]. */
    STRING_CURRENT("string.current", "A", "(string|led).?current|i[ _.]?led");

    private static final String LINE =
            "[vui]?(line|mains|input|in|netz|ac|grid|supply)(voltage|current|spannung|strom)?";
    private static final String ELECTRIC =
            "v|u|i|volts?|voltage|spannung|tension|amps?|amperes?|current|strom|courant|rms";
    private static final String CHANNEL =
            "(ch|chan|channel|kanal|voie|trace|probe|clamp|signal|data)([^\\p{L}]*[a-d])?";

    /** Names that consist only of words for the line, a channel or the measured quantity. */
    private static final Pattern NO_OTHER_PLACE = Pattern.compile(
            "[a-d]|c\\d|[^\\p{L}]*(?:(?:" + LINE + "|" + ELECTRIC + "|" + CHANNEL + ")(?:[^\\p{L}]+|$))*",
            Pattern.CASE_INSENSITIVE);

    private final String word;
    private final String unit;
    private final Pattern name;

    CaptureQuantity(String word, String unit, String name) {
        this.word = word;
        this.unit = unit;
        this.name = Pattern.compile(name, Pattern.CASE_INSENSITIVE);
    }

    /** Its name. */
    public String word() {
        return word;
    }

    /** The names of all. */
    public static List<String> words() {
        return Arrays.stream(values()).map(CaptureQuantity::word).toList();
    }

    /** A value of it in words; light has a unit of its own, and so none. */
    String text(double value) {
        return this == LIGHT ? PlainNumber.fixed(value, 4) : Engineering.rounded(value, unit);
    }

    /** Whether the name of a signal says that it is this. */
    boolean named(Signal signal) {
        return name.matcher(signal.name().strip()).matches();
    }

    /** Whether a signal may be a line quantity: no word of its name refers to another place of a circuit. */
    static boolean mayBeLine(Signal signal) {
        return NO_OTHER_PLACE.matcher(signal.name().strip()).matches();
    }

    /** Whether the unit of a signal is that of this, with or without a prefix. */
    boolean measuredIn(Signal signal) {
        return in(unit, signal);
    }

    /** Whether the unit of a signal is that of another electric quantity, such as the volts that a clamp gives. */
    boolean contradicts(Signal signal) {
        return this != LIGHT && Stream.of("V", "A", "W").anyMatch(other -> !other.equals(unit) && in(other, signal));
    }

    private static boolean in(String unit, Signal signal) {
        return signal.unit().length() <= unit.length() + 1 && signal.unit().endsWith(unit);
    }
}
