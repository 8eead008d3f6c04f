package lampproof.design;

/** Worst stress of the semiconductors over all lines, and the classes in which they are sold. */
final class Stress {

    /** How a voltage rating is chosen. */
    static final String RULE =
            "highest line crest, or coldest string voltage, with 10 % of surge at 80 % of the rating";

    private static final double SURGE = 1.1;
    private static final double DERATING = 0.8;
    private static final double[] VOLTAGES = {
        30, 60, 100, 150, 200, 250, 300, 400, 500, 600, 650, 700, 800, 900, 1000, 1200
    };
    private static final double[] CURRENTS = {0.2, 0.3, 0.5, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20};

    private Stress() {}

    /** Voltage class of switch and diode [V]. */
    static double voltageClass(Demand demand) {
        double cold = 1.05 * demand.stringVoltage();
        double worst = demand.isStepUp() ? cold : demand.highestCrest();
        return Rounding.rating(SURGE * worst / DERATING, VOLTAGES);
    }

    /** Current class for a stress [A]. */
    static double currentClass(double stress) {
        return Rounding.rating(stress, CURRENTS);
    }
}
