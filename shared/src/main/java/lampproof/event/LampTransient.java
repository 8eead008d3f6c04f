package lampproof.event;

import lampproof.design.Driver;
import lampproof.quasistatic.AnglePoint;
import lampproof.quasistatic.Operation;

/** The transient of a running lamp through an event, in small steps of time. */
final class LampTransient {

    private static final double STEPS_PER_ON_TIME = 200;
    private static final double LONGEST_STEP = 10e-9;

    private final Driver driver;
    private final InputStage input;
    private final PowerStage stage;
    private final ControlCell cell;
    private final double step;
    private double time;
    private double lineCurrent;
    private double busVoltage;
    private double nodeVoltage;
    private double inductorCurrent;
    private double switchCurrent;
    private double outputVoltage;
    private double reverseVoltage;
    private double stringCurrent;
    private double startTime = Double.POSITIVE_INFINITY;

    /** The lamp of a steady state at a point of the line, on a source of the line voltage. */
    LampTransient(Operation operation, AnglePoint start, LineSource lineSource) {
        driver = operation.driver();
        input = new InputStage(driver, lineSource, start);
        stage = new PowerStage(driver, start);
        cell = new ControlCell(operation, start.busVoltage());
        step = Math.min(LONGEST_STEP, operation.stageAtCrest().pace().onTime() / STEPS_PER_ON_TIME);
    }

    double time() {
        return time;
    }

    /** Goes on until a time [s], or until the control cell is stopped. */
    void until(double end, StringFault fault) {
        while (time < end && !cell.stopped()) {
            advance(fault);
        }
    }

    /** Goes on until a time [s], or until the string carries half its mean current. */
    void untilLight(double end) {
        while (time < end && time < startTime) {
            advance(StringFault.NONE);
        }
    }

    /** Goes on until a time [s], whatever happens. */
    void through(double end, StringFault fault) {
        while (time < end) {
            advance(fault);
        }
    }

    EventResult result(double instant) {
        return new EventResult(
                instant,
                time,
                lineCurrent,
                busVoltage,
                nodeVoltage,
                inductorCurrent,
                switchCurrent,
                outputVoltage,
                reverseVoltage,
                stringCurrent,
                Math.min(startTime, time));
    }

    private void advance(StringFault fault) {
        input.advance(step, stage.busCurrent());
        stage.advance(step, input.busVoltage(), cell.on(), fault);
        cell.advance(step, stage.inductorCurrent(), input.busVoltage(), stage.outputVoltage());
        time += step;
        watch();
    }

    private void watch() {
        lineCurrent = Math.max(lineCurrent, Math.abs(input.lineCurrent()));
        busVoltage = Math.max(busVoltage, input.busVoltage());
        nodeVoltage = Math.max(nodeVoltage, stage.nodeVoltage());
        inductorCurrent = Math.max(inductorCurrent, stage.inductorCurrent());
        switchCurrent = cell.on() ? Math.max(switchCurrent, stage.switchCurrent()) : switchCurrent;
        outputVoltage = Math.max(outputVoltage, stage.outputVoltage());
        reverseVoltage = Math.max(reverseVoltage, stage.reverseVoltage(input.busVoltage()));
        watchString(driver.string().current(stage.outputVoltage()));
    }

    private void watchString(double current) {
        stringCurrent = Math.max(stringCurrent, current);
        if (current >= 0.5 * driver.string().current()) {
            startTime = Math.min(startTime, time);
        }
    }
}
