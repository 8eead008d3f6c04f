package lampproof.deck;

import java.util.LinkedHashMap;
import java.util.Map;
import lampproof.design.Control;
import lampproof.design.Driver;
import lampproof.design.Exposure;
import lampproof.event.LampEvents;
import lampproof.prediction.Solution;

/**
 * The settings of the control cell.
 *
 * <p>The cell follows its target through an RC; with thresholds at 0.6 rising and 0.4 falling the switch lags
 * the target by 0.916 time constants. Timers are read in volts, one for each microsecond, and start or stop when the
 * gate passes 0.2 or 0.8, which the timer settings allow for.
 */
final class CellValues {

    private static final double GATE_RESISTANCE = 1e3;
    private static final double FOLLOW_RESISTANCE = 1e6;
    private static final double SWITCH_LAG = -Math.log(0.4);
    private static final double TIMER_LAG = -Math.log(0.8);
    private static final double EDGE = 20e-9;
    private static final double CLOCK_WIDTH = 150e-9;

    private final Solution solution;
    private final Driver driver;
    private final double stop;
    private final double gateTimeConstant;

    CellValues(Solution solution, double stop) {
        this.solution = solution;
        this.driver = solution.driver();
        this.stop = stop;
        this.gateTimeConstant = driver.control().delay() / SWITCH_LAG;
    }

    Map<String, Object> model() {
        Control control = driver.control();
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("law", control.law().word());
        values.put("gateCapacitance", gateTimeConstant / GATE_RESISTANCE);
        values.putAll(protection());
        if (control.law().setsCurrent()) {
            values.putAll(currentCell(control));
        } else {
            values.put("onTimer", timer(solution.operation().setPoint()));
            values.put("minOffTimer", timer(control.minOffTime()));
            values.put("width", solution.operation().setPoint() - EDGE);
        }
        values.put("closingTimer", sinceTurnOn(0));
        values.put("edge", EDGE);
        values.put("clockWidth", CLOCK_WIDTH);
        values.put("period", 1 / control.frequency());
        values.put("phase", phase(1 / control.frequency()));
        return values;
    }

    private Map<String, Object> protection() {
        Exposure exposure = driver.exposure();
        return Map.of(
                "voltageLimit",
                exposure.voltageLimit(),
                "limitVoltage",
                exposure.currentLimit() * driver.senseResistance(),
                "limitBlankingTimer",
                sinceTurnOn(exposure.blanking()),
                "restartTimer",
                timer(exposure.restart()));
    }

    private Map<String, Object> currentCell(Control control) {
        double reference = solution.operation().setPoint() * driver.senseResistance();
        double slope = driver.senseResistance() * control.slope();
        return Map.of(
                "flatVoltage",
                reference * (1 - control.shaping()) + slope * (SWITCH_LAG - TIMER_LAG) * gateTimeConstant,
                "followGain",
                reference * control.shaping() / driver.line().crest(),
                "followCapacitance",
                control.followTime() / FOLLOW_RESISTANCE,
                "slopeVoltage",
                1e-6 * slope,
                "blankingTimer",
                sinceTurnOn(control.blanking()),
                "maxOnTimer",
                sinceTurnOn(control.maxOnTime()),
                "offTimer",
                timer(control.offTime()));
    }

    /** Timer reading [V] at which the target must turn for the switch to hold its state for a time [s]. */
    private double timer(double time) {
        return 1e6 * (time - TIMER_LAG * gateTimeConstant);
    }

    /** Timer reading [V] when a time [s] has passed since the switch closed. */
    private double sinceTurnOn(double time) {
        return 1e6 * (time + (SWITCH_LAG - TIMER_LAG) * gateTimeConstant);
    }

    /** Time of the first clock edge [s]: if the run ended on an edge, the last steps of the simulator would collapse. */
    private double phase(double period) {
        double cycles = stop / period - LampEvents.CLOCK_AT_END;
        return (cycles - Math.floor(cycles)) * period;
    }
}
