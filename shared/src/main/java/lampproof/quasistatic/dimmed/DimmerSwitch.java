package lampproof.quasistatic.dimmed;

import lampproof.design.Dimming;
import lampproof.design.Dimming.Edge;
import lampproof.design.Line;

/**
 * When the switch of a dimmer conducts.
 *
 * <p>A triac is fired once in a half cycle and then conducts until its current falls below the holding current; the
 * transistors of a trailing-edge dimmer open by the clock.
 */
final class DimmerSwitch {

    private final boolean leading;
    private final double holding;
    private final double from;
    private final double pulseEnd;
    private final double until;
    private final double watchFrom;
    private final double watchUntil;
    private boolean closed;
    private boolean fired;

    DimmerSwitch(Dimming dimming, Line line) {
        double rate = line.angularFrequency();
        leading = dimming.edge() == Edge.LEADING;
        holding = dimming.holdingCurrent();
        from = dimming.conduction() > 0 ? dimming.firingAngle() / rate : Double.POSITIVE_INFINITY;
        pulseEnd = from + Dimming.GATE_PULSE;
        until = leading ? line.halfPeriod() : dimming.conduction() / rate;
        watchFrom = dimming.watchFrom(line);
        watchUntil = dimming.watchUntil(line);
    }

    /** A new half cycle: the triac has been commutated by the line. */
    void begin() {
        closed = false;
        fired = false;
    }

    /** Whether the switch is closed at a time [s] of the half cycle. */
    boolean closedAt(double time) {
        if (!leading) {
            closed = time >= from && time < until;
        } else if (!fired && time >= from) {
            closed = true;
            fired = true;
        }
        return closed;
    }

    /** Whether a current [A] lets the switch go out; it stays out until it is fired again. */
    boolean goesOut(double time, double current) {
        if (leading && time > pulseEnd && Math.abs(current) < holding) {
            closed = false;
        }
        return !closed;
    }

    /** Whether the current has to stay above the holding current now. */
    boolean watched(double time) {
        return time > watchFrom && time < watchUntil;
    }
}
