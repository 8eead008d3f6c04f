package lampproof.quasistatic;

import lampproof.design.Topology;

/** The shape of the switching ripple on the bus. */
public final class BusRipple {

    private BusRipple() {}

    /**
     * Mean square of a swing [unit of the swing, squared]. A step-up converter's triangular current makes arcs of it, whose
     * mean square is a sine's within a tenth; a step-down converter's pulses make a triangle of it.
     */
    public static double meanSquare(Topology topology, double swing) {
        return swing * swing / (topology == Topology.STEP_UP ? 8 : 12);
    }
}
