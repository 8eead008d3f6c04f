package lampproof.design;

import static lampproof.physics.PreferredSeries.E6;

import lampproof.physics.CapacitorResistance;

/** Chooses the capacitor across the string. */
final class OutputSizing {

    private static final double FLICKER = 0.30;
    private static final double RIPPLE = 0.05;
    private static final double DISSIPATION_FACTOR = 0.01;
    private static final double[] CLASSES = {16, 25, 35, 50, 63, 100, 160, 200, 250, 400, 450, 500, 630, 800, 1000};

    private final Choosing choose;
    private final Demand demand;

    OutputSizing(Choosing choose, Demand demand) {
        this.choose = choose;
        this.demand = demand;
    }

    Output output() {
        double capacitance = choose.amount("output.capacitance", rule(), () -> E6.up(capacitance()));
        choose.amount(
                "output.voltage_rating",
                "coldest string voltage with 10 % of overshoot at derating.capacitor, class",
                () -> Rounding.rating(
                        1.1
                                * 1.05
                                * demand.stringVoltage()
                                / Derating.of(choose).capacitor(),
                        CLASSES));
        return new Output(capacitance);
    }

    private String rule() {
        return demand.isStepUp()
                ? "percent flicker of 30 %, film, E6"
                : "switching ripple of a twentieth of the string current at the crest, ceramic or film, E6";
    }

    /** First order: the string's resistance and the capacitor divide the line ripple, or the switching ripple. */
    private double capacitance() {
        double resistance = demand.string().resistance();
        if (demand.isStepUp()) {
            double attenuation = Math.sqrt(1 / (FLICKER * FLICKER) - 1);
            return attenuation / (2 * demand.line().angularFrequency() * resistance);
        }
        CrestPoint crest = demand.crest();
        return crest.ripple() / (8 * demand.frequency() * resistance * RIPPLE * crest.current());
    }

    double resistance(Output output) {
        return choose.amount(
                "output.resistance",
                "dissipation factor of 1 % at the switching frequency",
                () -> Rounding.twoDigits(CapacitorResistance.of(
                        DISSIPATION_FACTOR, demand.frequency(), Math.max(1e-12, output.capacitance()))));
    }
}
