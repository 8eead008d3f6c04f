package lampproof.quasistatic;

import lampproof.physics.SoftRecovery;

/**
 * A cell that goes from one switching cycle to the next.
 *
 * <p>It keeps the currents and times of its last cycle and is overwritten by the next one: most cycles are solved only to find
 * the current with which another begins. A cycle that is kept becomes a {@link CellCycle}.
 */
final class CellRun {

    private final SwitchingCell cell;
    private final OffTime offTime;

    // the voltages between which it works, named as in CellSupply
    private double source;
    private double sourceDroop;
    private double swing;
    private double reset;
    private double resetGrowth;
    private double ringing;
    private double idleSource;

    // its last cycle
    private double start;
    private double peak;
    private double onTime;
    private double onDecay;
    private double rise;
    private double landing;
    private double end;
    private double fall;
    private double fallDecay;
    private double idle;

    CellRun(SwitchingCell cell, OffTime offTime) {
        this.cell = cell;
        this.offTime = offTime;
    }

    /** Goes on after a cycle. */
    void follow(CellCycle last) {
        start = last.on().from();
        peak = last.on().to();
        onTime = last.on().time();
        onDecay = last.on().decay();
        rise = last.rise().time();
        landing = last.diode().from();
        end = last.diode().to();
        fall = last.diode().time();
        fallDecay = last.diode().decay();
        idle = last.ring().time();
    }

    /** Works between other voltages. */
    void between(CellSupply supply) {
        source = supply.source();
        sourceDroop = supply.sourceDroop();
        swing = supply.swing();
        reset = supply.reset();
        resetGrowth = supply.resetGrowth();
        ringing = supply.ring();
        idleSource = supply.idle();
    }

    /** Solves the cycle that begins with a current [A] and keeps the switch on for a time [s]. */
    void next(double from, double time) {
        start = from;
        onTime = time;
        peak = cell.currentAfter(from, source, time);
        onDecay = cell.onDecay(from, peak, sourceDroop);
        landing = peak > 0 ? landing() : 0;
        rise = peak > 0 ? NodeRise.time(cell, source, top(), peak, landing) : 0;
        fall(cell.fallTime(landing, reset));
    }

    /** The diode conducts until the current has come to zero, or until the switch cuts it off. */
    private void fall(double whole) {
        double off = offTime.after(rise + whole, onTime);
        boolean cut = off < rise + whole;
        fall = Math.max(0, cut ? off - rise : whole);
        end = cut ? cell.currentFalling(landing, reset, fall) : 0;
        fallDecay = cell.offDecay(landing, end, resetGrowth);
        idle = cut ? 0 : off - rise - whole;
    }

    /** Current with which the diode takes over [A]; zero where it is too small to lift the node that far. */
    private double landing() {
        double lift = (2 * source - swing) * swing / (cell.impedance() * cell.impedance());
        return Math.sqrt(Math.max(0, peak * peak + lift));
    }

    /** The node voltage at which the diode takes over, or else the crest from which the node swings down again [V]. */
    private double top() {
        return landing > 0 ? swing : source + cell.amplitude(source, peak);
    }

    /** Inductor current while the switch conducts. */
    Ramp on() {
        return new Ramp(start, peak, onTime, onDecay);
    }

    /** Inductor current while the diode conducts. */
    Ramp diode() {
        return new Ramp(landing, end, fall, fallDecay);
    }

    /** E, the inductor voltage while the switch conducts, drops left out [V]. */
    double source() {
        return source;
    }

    /** Inductor current at turn-off [A]. */
    double peak() {
        return peak;
    }

    /** Whether the switch takes over while the diode still conducts. */
    boolean isContinuous() {
        return end > 0;
    }

    /** Time from turn-on to turn-on [s]. */
    double period() {
        return onTime + rise + fall + idle;
    }

    /** Inductor current at the next turn-on [A]. */
    double nextStart() {
        boolean rings = peak > 0 && !isContinuous();
        return rings ? IdleRing.currentAfter(cell, ringSource(), ringStart(), idle) : end;
    }

    /** The last cycle, whole. An on-time too short to turn a negative current round leaves it to the body diode. */
    CellCycle cycle() {
        return peak > 0
                ? new CellCycle(
                        on(), rise(), cell.amplitude(source, peak) / cell.impedance(), diode(), ring(), recovery())
                : new CellCycle(on(), NodeRise.NONE, 0, Ramp.NONE, new IdleRing(idle, 0, 0, 0, 0), SoftRecovery.NONE);
    }

    private NodeRise rise() {
        return NodeRise.lasting(rise, cell, source, top(), peak, landing);
    }

    private IdleRing ring() {
        return isContinuous() ? IdleRing.none(swing) : IdleRing.from(cell, ringSource(), ringStart(), idle);
    }

    private double ringSource() {
        return landing > 0 ? idleSource : source;
    }

    private double ringStart() {
        return landing > 0 ? idleSource + ringing : top();
    }

    private SoftRecovery recovery() {
        return isContinuous() ? SoftRecovery.after(landing, end, fall, cell.recoveryTime()) : SoftRecovery.NONE;
    }
}
