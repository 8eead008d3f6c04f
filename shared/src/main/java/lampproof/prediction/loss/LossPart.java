package lampproof.prediction.loss;

/** A part of the lamp that loses power, with all that is said of its loss, in the order of the power. */
public enum LossPart {
    /** All between the mains and the bridge. */
    FILTER("filter", "Fuse, filter and line", "loss of fuse, filter, damping and line resistance", "P_f"),
    /** The bridge. */
    BRIDGE("bridge", "Bridge", "loss of bridge", "P_br"),
    /** The capacitors before and behind the bridge. */
    CAPACITORS(
            "capacitors",
            "Capacitors of filter and bus",
            "loss of the capacitors of filter and bus",
            "(w C V^2) tan delta + R_C I_C,bus^2",
            "dissipation factor and series resistance; common practice, no source"),
    /** The load for the dimmer. */
    BLEEDER("bleeder", "Bleeder", "loss of bleeder", "P_bl"),
    /** The supply of the controller. */
    BIAS("bias", "Controller supply", "loss of controller supply", "P_bias"),
    /** Core and winding. */
    INDUCTOR("inductor", "Inductor", "loss of winding and core of the inductor", "P_L,cu + P_L,ac + P_L,fe"),
    /** The switch and its gate. */
    SWITCH("switch", "Switch and gate", "loss of switch and gate", "P_Q,on + P_Q,ov + P_Q,C + P_Q,g"),
    /** The snubber across the switch. */
    SNUBBER(
            "snubber",
            "Snubber",
            "loss of the snubber across the switch",
            "<C_s (V_off^2 + V_on^2) f / 2>",
            "P. C. Todd, Unitrode SEM-900 topic 2, 1993, from memory; form for two voltages derived"),
    /** The resistor that senses the switch current. */
    SENSE("sense", "Sense resistor", "loss of sense resistor", "P_R"),
    /** The diode, with what its recovery burns in the switch. */
    DIODE("diode", "Diode", "loss of freewheel diode, recovery included", "P_D + P_D,rr"),
    /** The output capacitor. */
    OUTPUT("output", "Output capacitor", "loss of series resistance of the output capacitor", "R_C I_C,o^2");

    private final String word;
    private final String label;
    private final String definition;
    private final String formula;
    private final String source;

    LossPart(String word, String label, String definition, String formula) {
        this(word, label, definition, formula, "sum of the losses of the part");
    }

    LossPart(String word, String label, String definition, String formula, String source) {
        this.word = word;
        this.label = label;
        this.definition = definition;
        this.formula = formula;
        this.source = source;
    }

    /** One word for it; what has a temperature of its own has the same word in a spec. */
    public String word() {
        return word;
    }

    /** What a reader calls it. */
    public String label() {
        return label;
    }

    /** The name of the figure of its loss. */
    public String figure() {
        return "loss." + word;
    }

    /** The symbol of its loss. */
    public String symbol() {
        return "P_" + word;
    }

    /** What its loss is. */
    public String definition() {
        return definition;
    }

    /** The formula of its loss, with the symbols of other figures. */
    public String formula() {
        return formula;
    }

    /** Where the formula comes from. */
    public String source() {
        return source;
    }
}
