package lampproof.quasistatic;

import java.util.Map;
import lampproof.design.Control;
import lampproof.design.Driver;
import lampproof.design.Inductor;
import lampproof.design.LedString;
import lampproof.design.Output;

/** A driver with other part values. */
final class ChangedDriver {

    private ChangedDriver() {}

    /** The driver with the parts, line and string that are given, and a control cell. */
    static Driver of(Driver driver, Map<Condition, Double> changed, Control control) {
        Inductor inductor = driver.inductor();
        double line = changed.getOrDefault(Condition.LINE_VOLTAGE, driver.line().voltage());
        return new Driver(
                driver.topology(),
                driver.line().at(line),
                driver.filter(),
                driver.bridge(),
                changed.getOrDefault(Condition.BUS_CAPACITANCE, driver.busCapacitance()),
                inductor.with(changed.getOrDefault(Condition.INDUCTANCE, inductor.inductance())),
                driver.powerSwitch(),
                driver.diode(),
                driver.senseResistance(),
                output(driver.output(), changed),
                string(driver.string(), changed),
                control,
                driver.edges(),
                driver.capacitorLosses(),
                driver.supplyCurrent(),
                driver.dimming(),
                driver.heat(),
                driver.exposure());
    }

    /** A capacitance that was measured holds for the voltage of the measurement. */
    private static Output output(Output output, Map<Condition, Double> changed) {
        Double measured = changed.get(Condition.OUTPUT_CAPACITANCE);
        return measured == null ? output : new Output(measured);
    }

    private static LedString string(LedString string, Map<Condition, Double> changed) {
        double rated = string.voltage(string.current());
        double shift = changed.getOrDefault(Condition.STRING_VOLTAGE, rated) - rated;
        return new LedString(string.knee() + shift, string.resistance(), string.current());
    }
}
