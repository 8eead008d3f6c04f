package lampproof.design;

/** Chooses the times and slopes of the control cell. */
final class ControlSizing {

    private final DesignValues values;
    private final Demand demand;
    private final CrestPoint crest;

    ControlSizing(DesignValues values, Demand demand) {
        this.values = values;
        this.demand = demand;
        this.crest = CrestPoint.typical(demand);
    }

    Control control() {
        return new Control(
                demand.law(),
                demand.frequency(),
                offTime(),
                minOffTime(),
                maxOnTime(),
                delay(values),
                blanking(),
                demand.shaping(),
                slope());
    }

    private double offTime() {
        return demand.law() == Law.FIXED_OFF_TIME
                ? values.amount(
                        "switching.off_time",
                        "the off-time for switching.frequency at the crest",
                        () -> Rounding.twoDigits(crest.source() / (crest.swing() * demand.frequency())))
                : 0;
    }

    private double minOffTime() {
        return demand.law() == Law.BOUNDARY
                ? values.amount(
                        "switching.min_off_time",
                        "10 % of the crest period",
                        () -> Rounding.twoDigits(0.1 / demand.frequency()))
                : 0;
    }

    private double maxOnTime() {
        if (!demand.law().setsCurrent()) {
            return 0;
        }
        boolean clocked = demand.law() == Law.PEAK_CURRENT;
        return values.amount(
                "switching.max_on_time",
                clocked ? "peak-current control: 90 % of the period" : "fixed-off-time control: twice the crest period",
                () -> Rounding.twoDigits((clocked ? 0.9 : 2) / demand.frequency()));
    }

    /** Time from comparator to switch [s]. */
    static double delay(DesignValues values) {
        return values.amount("switching.delay", "60 ns", () -> 60e-9);
    }

    private double blanking() {
        return demand.law().setsCurrent() ? blanking(values) : 0;
    }

    /** How long the current is ignored after turn-on, by a law that sets it and by the protection [s]. */
    static double blanking(DesignValues values) {
        return values.amount("switching.blanking", "250 ns: longer than the turn-on spike", () -> 250e-9);
    }

    private double slope() {
        return demand.law() == Law.PEAK_CURRENT
                ? values.amount(
                        "switching.slope",
                        "75 % of the falling current slope at the crest",
                        () -> Rounding.twoDigits(0.75 * (crest.swing() - crest.source()) / crest.inductance()))
                : 0;
    }
}
