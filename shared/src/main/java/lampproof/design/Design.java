package lampproof.design;

import java.util.List;
import lampproof.spec.SpecRow;

/**
 * A driver and where each of its values came from.
 *
 * @param driver the driver
 * @param rows every value: given in the spec, or filled in with the rule that chose it
 */
public record Design(Driver driver, List<SpecRow> rows) {

    /** Copies the rows. */
    public Design {
        rows = List.copyOf(rows);
    }

    /** The same design on another line voltage [V]. */
    public Design at(double lineVoltage) {
        return new Design(driver.on(driver.line().at(lineVoltage)), rows);
    }
}
