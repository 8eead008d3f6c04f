package lampproof.design;

/**
 * The share of a rating that ordinary use may take; a fault or a surge may take all of it.
 *
 * @param voltage of the voltage rating of a semiconductor [-]
 * @param current of the current rating of a semiconductor [-]
 * @param capacitor of the voltage rating of a capacitor [-]
 */
public record Derating(double voltage, double current, double capacitor) {

    static Derating of(DesignValues values) {
        return new Derating(
                values.amount("derating.voltage", "80 % of a semiconductor, common practice", () -> 0.8),
                values.amount("derating.current", "60 % of a semiconductor, common practice", () -> 0.6),
                values.amount("derating.capacitor", "90 % of film and ceramic, common practice", () -> 0.9));
    }
}
