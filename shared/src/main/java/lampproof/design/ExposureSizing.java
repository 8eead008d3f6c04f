package lampproof.design;

import java.util.Locale;
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
                surge(),
                Math.toRadians(choose.amount("decks.power_up_angle", "at the crest: the greatest inrush", () -> 90)),
                ratings());
    }

    private Surge surge() {
        Wave wave = Wave.valueOf(choose.word("surge.wave", "ring: the usual trial of lamps", "ring")
                .toUpperCase(Locale.ROOT));
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
        return new Ratings(
                choose.known("bus.voltage_rating"),
                choose.known("output.voltage_rating"),
                choose.known("switch.voltage_rating"),
                choose.known("switch.current_rating"),
                choose.known("diode.voltage_rating"));
    }
}
