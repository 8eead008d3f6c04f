package lampproof.deck;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampproof.design.Control;
import lampproof.design.Driver;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Solution;
import lampproof.quasistatic.AnglePoint;
import lampproof.quasistatic.SlowState;
import lampproof.quasistatic.StageStress;

/**
 * The values that a deck template is filled with.
 *
 * <p>The control cell follows its target through an RC; with thresholds at 0.6 rising and 0.4 falling the switch lags
 * the target by 0.916 time constants. Timers are read in volts, one for each microsecond, and start or stop when the
 * gate passes 0.2 or 0.8, which the timer settings allow for.
 */
final class DeckValues {

    private static final double GATE_RESISTANCE = 1e3;
    private static final double FOLLOW_RESISTANCE = 1e6;
    private static final double SWITCH_LAG = -Math.log(0.4);
    private static final double TIMER_LAG = -Math.log(0.8);
    private static final double NODE_TIME_CONSTANT = 0.2e-9;
    private static final double EDGE = 20e-9;
    private static final double CLOCK_WIDTH = 150e-9;
    private static final double FOLLOW_PERIODS = 3;
    private static final double CLOCK_AT_STOP = 0.95;
    private static final double CREST_CYCLES = 40 + CLOCK_AT_STOP;
    private static final double STEPS_PER_ON_TIME_MAINS = 25;
    private static final double STEPS_PER_ON_TIME_CREST = 100;
    private static final double STEPS_PER_RING = 100;

    private final Solution solution;
    private final Driver driver;
    private final DeckKind kind;
    private final double gateTimeConstant;

    DeckValues(Solution solution, DeckKind kind) {
        this.solution = solution;
        this.driver = solution.driver();
        this.kind = kind;
        this.gateTimeConstant = driver.control().delay() / SWITCH_LAG;
    }

    Map<String, Object> with(String title, List<String> figures) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("deck", deck(title, figures));
        values.put("driver", driverValues());
        values.put("circuit", circuit());
        values.put("cell", cell());
        values.put("start", kind == DeckKind.CREST ? crestStart() : mainsStart());
        return values;
    }

    private Map<String, Object> driverValues() {
        Map<String, Object> values = RecordModel.of(driver);
        Map<String, Object> line = RecordModel.of(driver.line());
        line.put("crest", driver.line().crest());
        values.put("line", line);
        return values;
    }

    private Map<String, Object> deck(String title, List<String> figures) {
        return Map.of(
                "name",
                kind.word(),
                "title",
                title,
                "figures",
                figures,
                "step",
                step(),
                "stop",
                stop(),
                "almostStop",
                stop() * (1 - 1e-9));
    }

    private double step() {
        double onTime = solution.crestStage().meanOnTime();
        if (kind == DeckKind.CREST) {
            return ringing(solution.crestStage(), onTime / STEPS_PER_ON_TIME_CREST);
        }
        return ringing(solution.stage(), onTime / STEPS_PER_ON_TIME_MAINS);
    }

    private double ringing(StageStress stage, double step) {
        return stage.discontinuousShare() > 0.5 ? Math.min(step, ringPeriod() / STEPS_PER_RING) : step;
    }

    private double stop() {
        return kind == DeckKind.CREST
                ? CREST_CYCLES / solution.crestStage().leastFrequency()
                : 2 * driver.line().halfPeriod();
    }

    /** When the clock first strikes [s]: the run must not end on an edge, or the simulator's last steps vanish. */
    private double phase(double period) {
        double cycles = stop() / period - CLOCK_AT_STOP;
        return (cycles - Math.floor(cycles)) * period;
    }

    /** Period of the ring of inductor and node capacitance [s]: Gear's rule damps it when it is not followed. */
    private double ringPeriod() {
        return 2
                * Math.PI
                * Math.sqrt(
                        driver.inductor().inductance() * driver.powerSwitch().capacitance());
    }

    private Map<String, Object> circuit() {
        return Map.of(
                "fuseResistance",
                driver.line().resistance() + driver.filter().fuseResistance(),
                "bridgeResistance",
                2 * driver.bridge().resistance(),
                "nodeResistance",
                NODE_TIME_CONSTANT / driver.powerSwitch().capacitance());
    }

    private Map<String, Object> cell() {
        Control control = driver.control();
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("law", control.law().word());
        values.put("gateCapacitance", gateTimeConstant / GATE_RESISTANCE);
        if (control.law().setsCurrent()) {
            values.putAll(currentCell(control));
        } else {
            values.put("onTimer", timer(solution.operation().setPoint()));
            values.put("minOffTimer", timer(control.minOffTime()));
            values.put("width", solution.operation().setPoint() - EDGE);
        }
        values.put("edge", EDGE);
        values.put("clockWidth", CLOCK_WIDTH);
        values.put("period", 1 / control.frequency());
        values.put("phase", phase(1 / control.frequency()));
        return values;
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
                FOLLOW_PERIODS / control.frequency() / FOLLOW_RESISTANCE,
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

    private Map<String, Object> mainsStart() {
        SlowState start = solution.operation().start();
        double displacement = driver.filter().capacitance()
                * driver.line().crest()
                * driver.line().angularFrequency();
        return Map.of(
                "filterCurrent",
                displacement,
                "filterVoltage",
                0,
                "busVoltage",
                start.busVoltage(),
                "outputVoltage",
                start.outputVoltage(),
                "inductorCurrent",
                0);
    }

    private Map<String, Object> crestStart() {
        AnglePoint crest = solution.operation().crest();
        double series = driver.line().resistance() + driver.filter().seriesResistance();
        return Map.of(
                "filterCurrent", crest.inputCurrent(),
                "filterVoltage", driver.line().crest() - series * crest.inputCurrent(),
                "busVoltage", crest.busVoltage(),
                "outputVoltage", crest.outputVoltage(),
                "inductorCurrent", crest.cycle().startCurrent(),
                "balanceCurrent", crest.outputCurrent() - crest.stringCurrent());
    }
}
