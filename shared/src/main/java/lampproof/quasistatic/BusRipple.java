package lampproof.quasistatic;

import lampproof.design.Topology;

/** The shape of the switching ripple on the bus. */
public final class BusRipple {

    private BusRipple() {}

    /**
     * Mean square of the ripple. A step-up converter's triangular current makes it parabolic, with the mean square of a sine
     * within a tenth; a step-down converter's pulses make it triangular.
     *
     * @param swing peak-to-peak value [unit of the ripple]
     * @return mean square [square of that unit]
     */
    public static double meanSquare(Topology topology, double swing) {
        return swing * swing / (topology == Topology.STEP_UP ? 8 : 12);
    }
}
