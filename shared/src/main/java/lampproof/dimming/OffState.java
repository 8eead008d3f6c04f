package lampproof.dimming;

/**
 * The lamp behind a dimmer that is off: its noise capacitor still feeds it.
 *
 * @param voltage rms voltage at the lamp [V]
 * @param current mean string current [A]: what glows
 */
public record OffState(double voltage, double current) {

    static OffState of(DimmingPoint off) {
        return new OffState(off.stress().lampVoltage(), off.current());
    }
}
