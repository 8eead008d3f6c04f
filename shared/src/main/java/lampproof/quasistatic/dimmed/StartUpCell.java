package lampproof.quasistatic.dimmed;

import lampproof.design.Control;
import lampproof.design.Driver;
import lampproof.quasistatic.ControlRule;
import lampproof.quasistatic.SwitchingCell;

/**
 * The inductor current of a step-up converter in the first cycles after its bus has come up, step by step.
 *
 * <p>A firing dimmer starts the cell at one certain moment and lifts the bus past the output a few cycles later, so what flows
 * then is no mean over all moments. Each cycle is a straight rise and fall, begun with the current that the swing of the
 * node leaves in a cycle of the same bus that repeats itself.
 */
final class StartUpCell {

    /** By then small differences of each cycle have added up to any phase. */
    private static final int CYCLES_OF_KNOWN_PHASE = 10;

    private final ControlRule rule;
    private final SwitchingCell cell;
    private boolean running;
    private boolean closed;
    private int cycles;
    private double since;
    private double voltSeconds;
    private double start;
    private double onTime;
    private double conduction;
    private double current;

    StartUpCell(Driver driver) {
        Control control = driver.control();
        this.rule = new ControlRule(control, driver.line().crest());
        this.cell = SwitchingCell.of(driver);
    }

    /** The bus is too low to supply the cell; it starts with its next step. */
    void stop() {
        running = false;
        cycles = 0;
        current = 0;
    }

    /** The cell has been on for long, so that any phase may be met. */
    void losePhase() {
        running = true;
        cycles = CYCLES_OF_KNOWN_PHASE + 1;
    }

    /** Whether it is known where in its cycle the cell is. */
    boolean isPhaseKnown() {
        return running && cycles <= CYCLES_OF_KNOWN_PHASE;
    }

    boolean isSwitchClosed() {
        return closed;
    }

    /** The inductor current [A]. */
    double current() {
        return current;
    }

    /**
     * Moves on; the first step after a stop closes the switch.
     *
     * @param bus bus voltage [V]
     * @param followed bus voltage that a shaped reference follows [V]
     * @param over bus voltage less that at which the diode conducts [V]
     * @param setPoint on-time [s] or peak current [A]
     * @param swung current that the swing of the node has left when the switch closes [A]
     * @param time length of the step [s]
     */
    void step(double bus, double followed, double over, double setPoint, double swung, double time) {
        if (!running) {
            running = true;
            close(0);
        }
        since += time;
        if (closed) {
            conduct(bus, followed, setPoint, time);
        } else {
            fall(over, swung, time);
        }
    }

    private void conduct(double bus, double followed, double setPoint, double time) {
        current += time * (bus - cell.onResistance() * current) / cell.inductance();
        voltSeconds += time * bus;
        onTime = rule.onTime(cell, voltSeconds / since, followed, start, setPoint);
        if (since + 0.5 * time >= onTime) {
            closed = false;
            since = 0;
            conduction = 0;
        }
    }

    private void fall(double over, double swung, double time) {
        if (current > 0) {
            current = Math.max(0, current + time * over / cell.inductance());
            conduction = current > 0 ? Double.POSITIVE_INFINITY : since;
        }
        if (since + 0.5 * time >= rule.offTime().after(conduction, onTime)) {
            close(current > 0 ? current : swung);
        }
    }

    private void close(double from) {
        closed = true;
        since = 0;
        voltSeconds = 0;
        start = from;
        current = from;
        cycles++;
    }
}
