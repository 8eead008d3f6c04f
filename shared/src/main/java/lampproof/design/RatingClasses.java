package lampproof.design;

/** Rating classes in which semiconductors are sold, and the class for the worst stress over all lines. */
final class RatingClasses {

    /** How a voltage rating is chosen. */
    static final String RULE =
            "highest line crest, or coldest string voltage, with a margin of 10 % at derating.voltage; surge at the full "
                    + "rating; next class";

    private static final double SPARE = 1.1;
    private static final double COLD = 1.05;
    private static final double[] VOLTAGES = {
        30, 60, 100, 150, 200, 250, 300, 400, 500, 600, 650, 700, 800, 900, 1000, 1200
    };
    private static final double[] CURRENTS = {0.2, 0.3, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20};

    private RatingClasses() {}

    /** Voltage class of switch and diode [V]: in a step-down converter both carry the surge on the bus. */
    static double voltageClass(DesignValues values, Demand demand) {
        double share = Derating.of(values).voltage();
        return demand.isStepUp()
                ? Rounding.rating(SPARE * COLD * demand.stringVoltage() / share, VOLTAGES)
                : Rounding.rating(behindLine(demand.highestCrest(), share, values), VOLTAGES);
    }

    /** Voltage class of a bridge diode [V]. */
    static double bridgeVoltageClass(DesignValues values, Demand demand) {
        return Rounding.rating(
                behindLine(demand.highestCrest(), Derating.of(values).voltage(), values), VOLTAGES);
    }

    /** Rating that withstands a line crest with a margin at its derated share, and a surge at the whole rating [V]. */
    private static double behindLine(double crest, double share, DesignValues values) {
        return Math.max(SPARE * crest / share, crest + LetThroughVoltage.of(values));
    }

    /** Current class for a current [A] in ordinary use. */
    static double currentClass(DesignValues values, double current) {
        return currentClass(values, current, 0);
    }

    /** Current class for a current [A] in ordinary use and one in a fault. */
    static double currentClass(DesignValues values, double current, double fault) {
        return Rounding.rating(Math.max(SPARE * current / Derating.of(values).current(), SPARE * fault), CURRENTS);
    }
}
