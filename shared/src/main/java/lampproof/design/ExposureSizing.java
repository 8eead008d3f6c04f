package lampproof.design;

import lampproof.design.Exposure.Ratings;

/** Chooses the protection of the control cell and the surge test. */
final class ExposureSizing {

    private static final double COLD = 1.05;
    private static final double OVERSHOOT = 1.1;
    private static final double RESTART = 200e-6;

    private final DesignValues values;
    private final Demand demand;

    ExposureSizing(DesignValues values, Demand demand) {
        this.values = values;
        this.demand = demand;
    }

    /** The exposure of a lamp whose parts are all chosen. */
    Exposure exposure() {
        return new Exposure(
                values.amount(
                        "output.voltage_limit",
                        "coldest string voltage plus 10 %",
                        () -> Rounding.twoDigits(OVERSHOOT * COLD * demand.stringVoltage())),
                values.amount(
                        "switching.current_limit",
                        "1.5 times the crest peak current at the lowest line",
                        () -> Rounding.twoDigits(1.5 * CrestPoint.lowest(demand).peak())),
                ControlSizing.blanking(values),
                values.amount(
                        "switching.restart_time",
                        "200 us: restart timer of boundary controllers, common practice, no source",
                        () -> RESTART),
                values.amount("string.short_resistance", "1 Ohm: wire and fault contact", () -> 1),
                Surge.of(values),
                Math.toRadians(
                        values.amount("decks.power_up_angle", "90 deg: greatest inrush, at the crest", () -> 90)),
                ratings(),
                Derating.of(values));
    }

    /**
     * Switch current with the string shorted [A]: the shortest on-time lifts it until diode, winding and short take as much
     * in the off-time. A step-up converter cannot limit it.
     */
    private double shortedPeak() {
        if (demand.isStepUp()) {
            return 0;
        }
        double on = ControlSizing.blanking(values) + ControlSizing.delay(values);
        double rise = demand.highestCrest() * on / values.known("inductor.inductance");
        double once = values.known("switching.current_limit") + rise;
        return demand.law() == Law.BOUNDARY ? once : Math.max(once, balance(on) + 0.5 * rise);
    }

    private double balance(double on) {
        double off =
                demand.law() == Law.FIXED_OFF_TIME ? values.known("switching.off_time") : 1 / demand.frequency() - on;
        double resistance = values.known("inductor.resistance")
                + values.known("diode.resistance")
                + values.known("string.short_resistance");
        return (demand.highestCrest() * on / off - values.known("diode.drop")) / resistance;
    }

    private Ratings ratings() {
        values.amount(
                "switch.current_rating",
                "peak at the lowest line with a margin of 10 % at derating.current; step-down: also the peak with the "
                        + "string shorted; next class",
                () -> RatingClasses.currentClass(
                        values, CrestPoint.lowest(demand).peak(), shortedPeak()));
        return new Ratings(
                values.known("bus.voltage_rating"),
                values.known("output.voltage_rating"),
                values.known("switch.voltage_rating"),
                values.known("switch.current_rating"),
                values.known("diode.voltage_rating"),
                values.known("diode.current_rating"),
                values.known("bridge.voltage_rating"),
                values.known("bridge.current_rating"));
    }
}
