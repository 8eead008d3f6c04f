package lampproof.lint.netlist;

import java.util.Arrays;
import java.util.Locale;

/** The kinds of element, each known by its name's first letter. */
public enum ElementKind {
    RESISTOR("r", "resistor", 2),
    CAPACITOR("c", "capacitor", 2),
    INDUCTOR("l", "inductor", 2),
    COUPLING("k", "coupling", 0),
    VOLTAGE_SOURCE("v", "voltage source", 2),
    CURRENT_SOURCE("i", "current source", 2),
    BEHAVIOURAL_SOURCE("b", "behavioural source", 2),
    VOLTAGE_CONTROLLED_VOLTAGE("e", "voltage-controlled voltage source", 2),
    VOLTAGE_CONTROLLED_CURRENT("g", "voltage-controlled current source", 2),
    CURRENT_CONTROLLED_CURRENT("f", "current-controlled current source", 2),
    CURRENT_CONTROLLED_VOLTAGE("h", "current-controlled voltage source", 2),
    SWITCH("s", "switch", 2),
    CURRENT_SWITCH("w", "current-controlled switch", 2),
    DIODE("d", "diode", 2),
    BIPOLAR("q", "bipolar transistor", 3),
    MOSFET("m", "MOSFET", 3),
    JFET("j", "JFET", 3),
    MESFET("z", "MESFET", 3),
    LINE("to", "transmission line", 4),
    SUBCIRCUIT("x", "subcircuit", 0),
    /** Code models, compiled models and digital parts, whose terminals only the simulator knows. */
    OPAQUE("anpuy", "code model", 0);

    private final String letters;
    private final String words;
    private final int terminals;

    ElementKind(String letters, String words, int terminals) {
        this.letters = letters;
        this.words = words;
        this.terminals = terminals;
    }

    /** The kind of element that a name's first letter stands for; opaque where no kind has that letter. */
    public static ElementKind of(Word name) {
        String letter = name.text().substring(0, 1).toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(kind -> kind.letters.contains(letter))
                .findFirst()
                .orElse(OPAQUE);
    }

    /** The kind's name in a sentence. */
    public String words() {
        return words;
    }

    /** The fewest terminals that carry current [-]. */
    public int terminals() {
        return terminals;
    }

    /** Whether an element of this kind names a model. */
    public boolean needsModel() {
        return switch (this) {
            case SWITCH, CURRENT_SWITCH, DIODE, BIPOLAR, MOSFET, JFET, MESFET -> true;
            default -> false;
        };
    }

    /** Whether the simulator keeps the current of an element of this kind as a vector {@code i(NAME)}. */
    public boolean hasCurrentVector() {
        return switch (this) {
            case VOLTAGE_SOURCE, INDUCTOR, VOLTAGE_CONTROLLED_VOLTAGE, CURRENT_CONTROLLED_VOLTAGE -> true;
            case BEHAVIOURAL_SOURCE -> true;
            default -> false;
        };
    }
}
