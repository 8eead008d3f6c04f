package lampproof.design;

import lampproof.unit.Dimension;
import lampproof.unit.QuantityWriter;

/** Chooses the freewheel diode. */
final class DiodeSizing {

    private static final double RECOVERY_TIME = 25e-9;

    private DiodeSizing() {}

    static Rectifier diode(DesignValues values, Demand demand) {
        Rectifier diode =
                rectifier(values, "diode", 0.9, CrestPoint.typical(demand).peak());
        values.amount("diode.voltage_rating", RatingClasses.RULE, () -> RatingClasses.voltageClass(values, demand));
        values.amount(
                "diode.current_rating",
                "mean current with a margin of 10 % at derating.current, next class",
                () -> RatingClasses.currentClass(values, demand.string().current()));
        return recovers(values) ? diode.recovering(recoveryTime(values, demand)) : diode;
    }

    private static boolean recovers(DesignValues values) {
        return values.word("diode.recovery", "none: the decks contain no reverse recovery", "none")
                .equals("soft");
    }

    /** Recovered charge over current [s]. */
    private static double recoveryTime(DesignValues values, Demand demand) {
        double current = values.amount(
                "diode.recovery_current",
                "the crest peak current",
                () -> CrestPoint.typical(demand).peak());
        return recoveryCharge(values, demand) / current;
    }

    /** Charge that a hard turn-off brings back [C]. */
    static double recoveryCharge(DesignValues values, Demand demand) {
        return values.amount(
                "diode.recovery_charge",
                "25 ns of the crest peak current: ultrafast silicon",
                () -> Rounding.twoDigits(
                        RECOVERY_TIME * CrestPoint.typical(demand).peak()));
    }

    /** A diode of a part's drop [V] at a current [A]. */
    static Rectifier rectifier(DesignValues values, String part, double usual, double current) {
        String rule = QuantityWriter.text(Dimension.VOLTAGE, usual) + ": junction diode at its working current";
        double drop = values.amount(part + ".drop", rule, () -> usual);
        double resistance = values.amount(
                part + ".resistance", "30 mV over the working current", () -> Rounding.twoDigits(0.03 / current));
        return Rectifier.through(drop, current, 1.8, resistance);
    }
}
