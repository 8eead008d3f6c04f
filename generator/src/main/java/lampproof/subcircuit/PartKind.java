package lampproof.subcircuit;

import java.util.List;
import lampproof.spec.Keyword;

/** The parts that a sub-circuit may replace, with their pins in order. */
public enum PartKind implements Keyword {
    /** The power switch with its body diode and output capacitance; its gate is driven to the gate voltage. */
    SWITCH("drain", "gate", "source"),
    /** The freewheel diode. */
    DIODE("anode", "cathode"),
    /** The power inductor with its winding; current that flows into its first pin counts as positive. */
    INDUCTOR("in", "out"),
    /** The LED string. */
    STRING("anode", "cathode");

    private final List<String> pins;

    PartKind(String... pins) {
        this.pins = List.of(pins);
    }

    /** The row of a spec that names the file. */
    public String row() {
        return word() + ".model";
    }

    /** The name of its sub-circuit in a deck. */
    public String subcircuit() {
        return "user_" + word();
    }

    /** Its pins, in order. */
    public List<String> pins() {
        return pins;
    }
}
