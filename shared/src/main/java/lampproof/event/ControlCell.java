package lampproof.event;

import lampproof.design.Control;
import lampproof.design.Driver;
import lampproof.design.Exposure;
import lampproof.design.Law;
import lampproof.quasistatic.Operation;

/** The control cell with its protection: over-voltage ends it for good, over-current ends an on-time, and a timer restarts it. */
final class ControlCell {

    private final Control control;
    private final Exposure exposure;
    private final Law law;
    private final double setPoint;
    private final double crest;
    private double followed;
    private boolean on = true;
    private boolean stopped;
    private double sinceTurn;
    private double sinceClock;
    private double turnsIn = Double.POSITIVE_INFINITY;

    /** The cell at turn-on. */
    ControlCell(Operation operation, double busVoltage) {
        Driver driver = operation.driver();
        control = driver.control();
        exposure = driver.exposure();
        law = control.law();
        setPoint = operation.setPoint();
        crest = driver.line().crest();
        followed = busVoltage;
    }

    /** Whether the switch is closed. */
    boolean on() {
        return on;
    }

    /** Whether over-voltage has ended it. */
    boolean stopped() {
        return stopped;
    }

    /** Goes on by a step [s] with inductor current [A], bus voltage [V] and output voltage [V]. */
    void advance(double step, double current, double busVoltage, double outputVoltage) {
        followed += step * (busVoltage - followed) / control.followTime();
        stopped |= outputVoltage > exposure.voltageLimit();
        sinceTurn += step;
        sinceClock += step;
        turnsIn -= step;
        boolean strikes = sinceClock >= 1 / control.frequency();
        if (strikes) {
            sinceClock -= 1 / control.frequency();
        }
        if (on) {
            watchOn(current);
        } else if (!stopped) {
            watchOff(current, strikes);
        }
        if (turnsIn <= 0) {
            turn();
        }
    }

    private void watchOn(double current) {
        boolean tooMuch = current > exposure.currentLimit() && sinceTurn > exposure.blanking();
        if (stopped || (!law.setsCurrent() && sinceTurn >= setPoint)) {
            turnsIn = 0;
        } else if (tooMuch || (law.setsCurrent() && reached(current))) {
            soon();
        }
    }

    private boolean reached(double current) {
        double share = 1 - control.shaping() + control.shaping() * followed / crest;
        double reference = setPoint * share - control.slope() * sinceTurn;
        return (current > reference && sinceTurn > control.blanking()) || sinceTurn > control.maxOnTime();
    }

    private void watchOff(double current, boolean strikes) {
        switch (law) {
            case BOUNDARY -> {
                boolean zero = current < 0 && sinceTurn >= control.minOffTime() - control.delay();
                if (zero || sinceTurn >= exposure.restart() - control.delay()) {
                    soon();
                }
            }
            case FIXED_OFF_TIME -> turnsIn = sinceTurn >= control.offTime() ? 0 : turnsIn;
            case FIXED_DUTY, PEAK_CURRENT -> turnsIn = strikes ? 0 : turnsIn;
        }
    }

    private void soon() {
        turnsIn = Math.min(turnsIn, control.delay());
    }

    private void turn() {
        on = !on;
        sinceTurn = 0;
        turnsIn = Double.POSITIVE_INFINITY;
    }
}
