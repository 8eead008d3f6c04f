package lampproof.design;

/**
 * The control cell.
 *
 * @param law when the switch closes and opens
 * @param frequency switching frequency of the fixed-frequency laws [Hz]
 * @param offTime off-time of the fixed-off-time law [s]
 * @param minOffTime shortest off-time of the boundary law [s]
 * @param maxOnTime longest on-time of the laws that wait for a current [s]
 * @param delay from an event to the switch having followed it [s]
 * @param blanking time after turn-on in which the current is ignored [s]
 * @param shaping share of the current reference that follows the bus voltage [-], 0 flat to 1 proportional
 * @param slope fall of the current reference during the on-time [A/s]
 */
public record Control(
        Law law,
        double frequency,
        double offTime,
        double minOffTime,
        double maxOnTime,
        double delay,
        double blanking,
        double shaping,
        double slope) {

    private static final double FOLLOW_PERIODS = 3;

    /** The same cell with another longest on-time and another blanking time [s]. */
    public Control limited(double longest, double blank) {
        return new Control(law, frequency, offTime, minOffTime, longest, delay, blank, shaping, slope);
    }

    /** The same cell with another off-time [s]. */
    public Control resting(double time) {
        return new Control(law, frequency, time, minOffTime, maxOnTime, delay, blanking, shaping, slope);
    }

    /** Time constant with which the reference follows the bus voltage, three switching periods [s]. */
    public double followTime() {
        return FOLLOW_PERIODS / frequency;
    }
}
