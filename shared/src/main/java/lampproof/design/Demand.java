package lampproof.design;

import lampproof.spec.Amount;

/**
 * The requirements of a spec before any part is chosen.
 *
 * @param topology the converter
 * @param law the control law
 * @param line the mains
 * @param lines rms line voltage from least to most [V]
 * @param string the LED string
 * @param frequency switching frequency [Hz]
 * @param shaping share of the current reference that follows the line [-]
 */
record Demand(Topology topology, Law law, Line line, Amount lines, LedString string, double frequency, double shaping) {

    private static final double EXPECTED_EFFICIENCY = 0.92;

    static Demand of(DesignValues values) {
        Topology topology = values.given("driver.topology", Topology.class);
        Law law = values.keyword("driver.control", "boundary: simplest with a good power factor", Law.BOUNDARY);
        Amount lines = values.range("line.voltage");
        Line line = new Line(
                lines.typical(),
                values.given("line.frequency"),
                values.amount("line.resistance", "1 Ohm: house wiring", () -> 1));
        LedString string = string(values);
        double frequency = values.amount(
                "switching.frequency", "65 kHz: below the 150 kHz where conducted limits begin", () -> 65e3);
        double shaping = law.setsCurrent()
                ? values.amount("driver.shaping", "1: the reference follows the line for the power factor", () -> 1)
                : 0;
        return new Demand(topology, law, line, lines, string, frequency, shaping);
    }

    private static LedString string(DesignValues values) {
        double voltage = values.given("string.voltage");
        double current = values.given("string.current");
        double resistance = values.amount(
                "string.resistance",
                "10 % of string voltage over string current",
                () -> Rounding.twoDigits(0.1 * voltage / current));
        return new LedString(voltage - resistance * current, resistance, current);
    }

    /** String voltage at its mean current [V]. */
    double stringVoltage() {
        return string.voltage(string.current());
    }

    /** Expected line power [W]. */
    double power() {
        return stringVoltage() * string.current() / EXPECTED_EFFICIENCY;
    }

    boolean isStepUp() {
        return topology == Topology.STEP_UP;
    }

    /** Crest of the highest line [V]. */
    double highestCrest() {
        return Math.sqrt(2) * lines.most();
    }
}
