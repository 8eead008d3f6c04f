package lampproof.quasistatic;

import lampproof.physics.SoftRecovery;

/**
 * One switching cycle: the switch conducts, the node rises, the diode conducts, the node rings until the next turn-on.
 *
 * @param on inductor current while the switch conducts; it starts below zero after a ring
 * @param rise what lifts the node
 * @param topCurrent greatest inductor current [A]: it still grows until the node has passed E
 * @param diode inductor current while the diode conducts; it ends at zero but in continuous mode
 * @param ring what follows until the next turn-on
 * @param recovery what the diode sends back at the next turn-on, through the switch
 */
public record CellCycle(Ramp on, NodeRise rise, double topCurrent, Ramp diode, IdleRing ring, SoftRecovery recovery) {

    /** A second in which nothing flows. */
    static final CellCycle NONE =
            new CellCycle(Ramp.NONE, NodeRise.NONE, 0, Ramp.NONE, new IdleRing(1, 0, 0, 0, 0), SoftRecovery.NONE);

    /** Inductor current at turn-on [A]. */
    public double startCurrent() {
        return on.from();
    }

    /** Inductor current at turn-off [A]. */
    public double peakCurrent() {
        return on.to();
    }

    /** Time in which the switch conducts [s]. */
    public double onTime() {
        return on.time();
    }

    /** Time from turn-on to turn-on [s]. */
    public double period() {
        return on.time() + rise.time() + diode.time() + ring.time();
    }

    /** Whether the switch takes over while the diode still conducts. */
    public boolean continuous() {
        return diode.to() > 0;
    }

    /** Inductor current at the next turn-on [A]. */
    public double nextStart() {
        return continuous() ? diode.to() : ring.current();
    }

    /** Charge through the terminals of the switch, its capacitance included [C]. */
    public double switchCharge() {
        return on.charge() + rise.charge() + ring.charge() + recovery.charge();
    }

    /** Charge through the diode, less what it sends back [C]. */
    public double diodeCharge() {
        return diode.charge() - recovery.charge();
    }

    /** Charge through the inductor [C]. */
    public double inductorCharge() {
        return switchCharge() + diodeCharge();
    }

    /** Integral of the squared current at the terminals of the switch [A^2 s]. */
    public double switchSquare() {
        return onSquare() + rise.square() + ring.square();
    }

    /** Integral of the squared current in the closed switch [A^2 s]. */
    public double onSquare() {
        return on.square() + recovery.squareOver(nextStart());
    }

    /** Integral of the squared diode current [A^2 s]. */
    public double diodeSquare() {
        return diode.square() + recovery.square();
    }

    /** Integral of the squared inductor current [A^2 s]. */
    public double inductorSquare() {
        return on.square() + rise.square() + ring.square() + diode.square();
    }

    /** Least current at the ends of the cycle [A]. */
    public double trough() {
        return Math.min(on.from(), Math.min(diode.to(), nextStart()));
    }
}
