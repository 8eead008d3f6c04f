package lampproof.quasistatic;

/** A quantity that a prediction depends on and a waveform shows. */
public enum Condition {
    /** Rms line voltage [V]. */
    LINE_VOLTAGE("line voltage", "V", false),
    /** Bus voltage at the crest of the line [V]. */
    BUS_VOLTAGE("bus voltage at the crest", "V", false),
    /** Output voltage at the crest of the line [V]. */
    OUTPUT_VOLTAGE("output voltage at the crest", "V", false),
    /** Voltage of the string at the mean current that it is meant for [V]. */
    STRING_VOLTAGE("voltage of the string at its rated current", "V", false),
    /** Mean time in which the switch conducts [s]. */
    ON_TIME("on-time", "s", false),
    /** Greatest inductor current, which a control cell sets [A]. */
    PEAK_CURRENT("peak current that the control cell sets", "A", false),
    /** Switching frequency at the crest of the line [Hz]. */
    FREQUENCY("switching frequency at the crest", "Hz", false),
    /** Inductor current at turn-on at the crest of the line [A]; above zero in continuous conduction. */
    TURN_ON_CURRENT("inductor current at turn-on", "A", false),
    /** Inductance of the power inductor [H]. */
    INDUCTANCE("inductor", "H", true),
    /** Capacitance of the output capacitor [F]. */
    OUTPUT_CAPACITANCE("output capacitor", "F", true),
    /** Capacitance of the bus capacitor [F]. */
    BUS_CAPACITANCE("bus capacitor", "F", true);

    private final String words;
    private final String unit;
    private final boolean part;

    Condition(String words, String unit, boolean part) {
        this.words = words;
        this.unit = unit;
        this.part = part;
    }

    /** What it is called. */
    public String words() {
        return words;
    }

    /** Its unit. */
    public String unit() {
        return unit;
    }

    /** Whether it is the value of a part. */
    public boolean part() {
        return part;
    }
}
