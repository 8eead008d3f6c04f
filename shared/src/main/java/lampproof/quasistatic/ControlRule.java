package lampproof.quasistatic;

import lampproof.design.Control;

/** The control law as the two times that it decides. */
public final class ControlRule {

    private final Control control;
    private final double crest;
    private final OffTime offTime;

    /**
     * The rule of a control cell.
     *
     * @param control the control cell
     * @param crest bus voltage at which a shaped reference is full [V]
     */
    public ControlRule(Control control, double crest) {
        this.control = control;
        this.crest = crest;
        this.offTime = offTimeOf(control);
    }

    /** How long the switch stays open. */
    public OffTime offTime() {
        return offTime;
    }

    /**
     * Time in which the switch conducts [s].
     *
     * @param cell the cell
     * @param source E [V]
     * @param followed bus voltage that a shaped reference follows [V]
     * @param start inductor current at turn-on [A]
     * @param setPoint on-time [s] or peak current [A]
     */
    public double onTime(SwitchingCell cell, double source, double followed, double start, double setPoint) {
        if (!control.law().setsCurrent()) {
            return setPoint;
        }
        double reference = setPoint * (1 - control.shaping() + control.shaping() * followed / crest);
        double reached = cell.timeToReach(reference, control.slope(), start, source);
        return Math.min(control.maxOnTime(), Math.max(control.blanking(), reached)) + control.delay();
    }

    private static OffTime offTimeOf(Control control) {
        return switch (control.law()) {
            case BOUNDARY -> (conduction, onTime) -> Math.max(control.minOffTime(), conduction + control.delay());
            case FIXED_OFF_TIME -> (conduction, onTime) -> control.offTime();
            case FIXED_DUTY, PEAK_CURRENT -> (conduction, onTime) -> Math.max(0, 1 / control.frequency() - onTime);
        };
    }
}
