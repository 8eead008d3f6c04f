package lampproof.prediction;

import java.util.Locale;

/** A voltage or current that decks write, as a column of a table; what belongs to a dimmer in the decks that have one. */
public enum Probe {
    /** Line voltage, from line to neutral [V]. */
    LINE_VOLTAGE("V"),
    /** Line current into the lamp [A]. */
    LINE_CURRENT("A"),
    /** Voltage across the bridge input, behind the filter [V]. */
    FILTERED_VOLTAGE("V"),
    /** Voltage that the bridge drops, both diodes together [V]. */
    BRIDGE_VOLTAGE("V"),
    /** Current out of the bridge [A]. */
    BRIDGE_CURRENT("A"),
    /** Bus voltage [V]. */
    BUS_VOLTAGE("V"),
    /** Voltage across the inductor with its winding, positive while the switch conducts [V]. */
    INDUCTOR_VOLTAGE("V"),
    /** Inductor current [A]. */
    INDUCTOR_CURRENT("A"),
    /** Voltage of the switch node against bus minus [V]. */
    SWITCH_VOLTAGE("V"),
    /** Current into the switch, its capacitance included [A]. */
    SWITCH_CURRENT("A"),
    /** Forward voltage of the diode [V]. */
    DIODE_VOLTAGE("V"),
    /** Diode current [A]. */
    DIODE_CURRENT("A"),
    /** Voltage across output capacitor and string [V]. */
    OUTPUT_VOLTAGE("V"),
    /** String current [A]. */
    STRING_CURRENT("A"),
    /** Gate signal, 0 open to 1 closed [V]. */
    GATE_VOLTAGE("V"),
    /** Current of the dimmer's switch [A]. */
    DIMMER_CURRENT("A"),
    /** Rectified voltage across the bleeder with its diodes [V]. */
    BLEEDER_VOLTAGE("V"),
    /** Current of the bleeder [A]. */
    BLEEDER_CURRENT("A"),
    /** Current of the controller's supply, from the bus [A]. */
    BIAS_CURRENT("A");

    private final String unit;

    Probe(String unit) {
        this.unit = unit;
    }

    /** The column in a table, such as {@code line_voltage}. */
    public String column() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The dotted name, such as {@code line.voltage}. */
    public String dotted() {
        return column().replace('_', '.');
    }

    /** The unit. */
    public String unit() {
        return unit;
    }
}
