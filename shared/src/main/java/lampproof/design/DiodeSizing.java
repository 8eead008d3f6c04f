package lampproof.design;

import java.util.Locale;

/** Chooses the freewheel diode. */
final class DiodeSizing {

    private static final double RECOVERY_TIME = 25e-9;

    private DiodeSizing() {}

    static Rectifier diode(Choosing choose, Demand demand) {
        Rectifier diode = rectifier(choose, "diode", 0.9, demand.crest().peak());
        choose.amount("diode.voltage_rating", Stress.RULE, () -> Stress.voltageClass(choose, demand));
        choose.amount(
                "diode.current_rating",
                "mean current, with 10 % to spare at derating.current, class",
                () -> Stress.currentClass(choose, demand.string().current()));
        return recovers(choose) ? diode.recovering(recoveryTime(choose, demand)) : diode;
    }

    private static boolean recovers(Choosing choose) {
        return choose.word("diode.recovery", "none: no deck contains the recovery of the diode", "none")
                .equals("soft");
    }

    /** Recovered charge over current [s]. */
    private static double recoveryTime(Choosing choose, Demand demand) {
        double current = choose.amount(
                "diode.recovery_current",
                "crest peak current",
                () -> demand.crest().peak());
        return recoveryCharge(choose, demand) / current;
    }

    /** Charge that a hard turn-off brings back [C]. */
    static double recoveryCharge(Choosing choose, Demand demand) {
        return choose.amount(
                "diode.recovery_charge",
                "25 ns of the crest peak current: ultrafast silicon",
                () -> Rounding.twoDigits(RECOVERY_TIME * demand.crest().peak()));
    }

    /** A diode of a part's drop [V] at a current [A]. */
    static Rectifier rectifier(Choosing choose, String part, double usual, double current) {
        String rule = String.format(Locale.ROOT, "junction diode at %.3g mA", 1e3 * current);
        double drop = choose.amount(part + ".drop", rule, () -> usual);
        double resistance =
                choose.amount(part + ".resistance", "small junction diode", () -> Rounding.twoDigits(0.03 / current));
        return Rectifier.through(drop, current, 1.8, resistance);
    }
}
