package lampproof.design;

import lampproof.design.Exposure.Ratings;
import lampproof.design.Surge.Wave;

/** Chooses the protection of the control cell and the surge that the lamp is tried with. */
final class ExposureSizing {

    private static final double COLD = 1.05;
    private static final double OVERSHOOT = 1.1;
    private static final double RESTART = 200e-6;

    private final Choosing choose;
    private final Demand demand;

    ExposureSizing(Choosing choose, Demand demand) {
        this.choose = choose;
        this.demand = demand;
    }

    /** The exposure of a lamp whose parts are all chosen. */
    Exposure exposure() {
        return new Exposure(
                choose.amount(
                        "output.voltage_limit",
                        "coldest string voltage and 10 %",
                        () -> Rounding.twoDigits(OVERSHOOT * COLD * demand.stringVoltage())),
                choose.amount(
                        "switching.current_limit",
                        "one and a half times the crest peak at the lowest line",
                        () -> Rounding.twoDigits(1.5 * demand.lowestCrest().peak())),
                ControlSizing.blanking(choose),
                choose.amount(
                        "switching.restart_time",
                        "200 us: restart timer of boundary controllers, common practice, no source",
                        () -> RESTART),
                choose.amount("string.short_resistance", "1 Ohm of wire and fault contact", () -> 1),
                surge(choose),
                Math.toRadians(choose.amount("decks.power_up_angle", "at the crest: the greatest inrush", () -> 90)),
                ratings(),
                Derating.of(choose));
    }

    /**
     * Switch current with the string shorted [A]: the shortest on-time lifts it until diode, winding and short take as much
     * in the off-time. A step-up converter cannot limit it.
     */
    private double shortedPeak() {
        if (demand.isStepUp()) {
            return 0;
        }
        double on = ControlSizing.blanking(choose) + ControlSizing.delay(choose);
        double rise = demand.highestCrest() * on / choose.known("inductor.inductance");
        double once = choose.known("switching.current_limit") + rise;
        return demand.law() == Law.BOUNDARY ? once : Math.max(once, balance(on) + 0.5 * rise);
    }

    private double balance(double on) {
        double off =
                demand.law() == Law.FIXED_OFF_TIME ? choose.known("switching.off_time") : 1 / demand.frequency() - on;
        double resistance = choose.known("inductor.resistance")
                + choose.known("diode.resistance")
                + choose.known("string.short_resistance");
        return (demand.highestCrest() * on / off - choose.known("diode.drop")) / resistance;
    }

    /** The surge that the lamp is tried with. */
    static Surge surge(Choosing choose) {
        Wave wave = choose.keyword("surge.wave", "ring: the usual trial of lamps", Wave.RING);
        boolean ring = wave == Wave.RING;
        double voltage = choose.amount(
                "surge.voltage",
                ring
                        ? "2.5 kV ring wave, ENERGY STAR for lamps (from memory)"
                        : "0.5 kV line to line up to 25 W, IEC 61547 (from memory)",
                () -> ring ? 2500 : 500);
        double impedance =
                ring ? choose.amount("surge.impedance", "30 Ohm, IEEE C62.41.2 category A (from memory)", () -> 30) : 2;
        double angle = choose.amount("surge.angle", "at the crest of the line", () -> 90);
        return new Surge(wave, voltage, impedance, Math.toRadians(angle));
    }

    private Ratings ratings() {
        choose.amount(
                "switch.current_rating",
                "peak at the lowest line, with 10 % to spare at derating.current, and in a step-down converter that of a "
                        + "shorted string, class",
                () -> Stress.currentClass(choose, demand.lowestCrest().peak(), shortedPeak()));
        return new Ratings(
                choose.known("bus.voltage_rating"),
                choose.known("output.voltage_rating"),
                choose.known("switch.voltage_rating"),
                choose.known("switch.current_rating"),
                choose.known("diode.voltage_rating"),
                choose.known("diode.current_rating"),
                choose.known("bridge.voltage_rating"),
                choose.known("bridge.current_rating"));
    }
}
