package lampproof.quasistatic;

/** How long the switch stays open. */
@FunctionalInterface
public interface OffTime {

    /**
     * Time from turn-off to turn-on [s].
     *
     * @param conduction time until the inductor current has come back to zero [s]
     * @param onTime time in which the switch conducted [s]
     */
    double after(double conduction, double onTime);
}
