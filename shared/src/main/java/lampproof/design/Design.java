package lampproof.design;

import lampproof.spec.Spec;

/**
 * A driver and where each of its values came from.
 *
 * @param driver the driver
 * @param values every value: given in the spec, or filled in with the rule that chose it
 */
public record Design(Driver driver, Spec values) {

    /** How finely its decks are simulated. */
    public Detail detail() {
        return values.keyword("decks.detail", Detail.class).orElseThrow();
    }

    /** The same design on another line voltage [V]. */
    public Design at(double lineVoltage) {
        return new Design(driver.on(driver.line().at(lineVoltage)), values);
    }
}
