package lampproof.design;

import static lampproof.physics.PreferredSeries.E6;

import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.physics.CapacitorResistance;
import lampproof.physics.CeramicBias;

/** Chooses the capacitor across the string. */
final class OutputSizing {

    private static final String WORKING = "output.capacitance";
    private static final String NOMINAL = "output.nominal_capacitance";
    private static final String LEFT = "output.capacitance_left";
    private static final double FLICKER = 0.30;
    private static final double RIPPLE = 0.05;
    private static final double LEAST_SHARE = 0.01;
    private static final double DISSIPATION_FACTOR = 0.01;
    private static final double[] CLASSES = {16, 25, 35, 50, 63, 100, 160, 200, 250, 400, 450, 500, 630, 800, 1000};

    private final DesignValues values;
    private final Demand demand;

    OutputSizing(DesignValues values, Demand demand) {
        this.values = values;
        this.demand = demand;
    }

    Output output() {
        Smoothing smoothing = smoothing();
        if (values.isGiven(NOMINAL)) {
            return ofNominal(values.known(NOMINAL));
        }
        double capacitance = values.amount(WORKING, smoothing.rule(), () -> E6.up(capacitance(smoothing)));
        double half = halfVoltage();
        double nominal = Double.isInfinite(half)
                ? capacitance
                : values.amount(
                        NOMINAL, "yields " + WORKING + " at the string voltage", () -> capacitance / left(half));
        return new Output(capacitance, nominal, half);
    }

    private Output ofNominal(double nominal) {
        if (values.isGiven(WORKING)) {
            throw UserFault.badInput(Finding.of(
                    "the output capacitor is given both without voltage and at its working voltage",
                    NOMINAL + ", " + WORKING,
                    "keep one of the two rows"));
        }
        double half = halfVoltage();
        double capacitance = values.amount(WORKING, NOMINAL + " at the string voltage", () -> nominal * left(half));
        return new Output(capacitance, nominal, half);
    }

    private double left(double half) {
        return CeramicBias.left(demand.stringVoltage(), half);
    }

    /** The full capacitance unless the spec gives a share: film, or a capacitance at the working voltage. */
    private double halfVoltage() {
        double rated = rating();
        return CeramicBias.halfVoltage(values.isOpen(LEFT) ? 1 : values.given(LEFT), rated);
    }

    private double rating() {
        return values.amount(
                "output.voltage_rating",
                "coldest string voltage with 10 % of overshoot at derating.capacitor, next class",
                () -> Rounding.rating(
                        1.1
                                * 1.05
                                * demand.stringVoltage()
                                / Derating.of(values).capacitor(),
                        CLASSES));
    }

    /** A step-up string has the voltage at which film smooths the line ripple; a low string would need an electrolytic. */
    private Smoothing smoothing() {
        Smoothing usual = demand.isStepUp() ? Smoothing.LINE : Smoothing.SWITCHING;
        return values.keyword("output.smoothing", "line in a step-up converter, else switching", usual);
    }

    private double capacitance(Smoothing smoothing) {
        return smoothing == Smoothing.LINE ? againstLine() : againstSwitching();
    }

    /** First order: the string's resistance and the capacitor divide the line ripple. */
    private double againstLine() {
        double attenuation = Math.sqrt(1 / (FLICKER * FLICKER) - 1);
        return attenuation / (2 * demand.line().angularFrequency() * stringResistance());
    }

    /**
     * First order: the inductor's triangle flows into the capacitor of a step-down converter; that of a step-up converter
     * feeds the string alone while the diode blocks.
     */
    private double againstSwitching() {
        CrestPoint crest = CrestPoint.typical(demand);
        double share = demand.isStepUp() ? crest.duty() : crest.ripple() / (8 * crest.current());
        return share / (demand.frequency() * stringResistance() * RIPPLE);
    }

    /** An ideal string needs no capacitor; its capacitor is chosen as for a string of 1 % of voltage over current. */
    private double stringResistance() {
        double usual = demand.stringVoltage() / demand.string().current();
        return Math.max(LEAST_SHARE * usual, demand.string().resistance());
    }

    double resistance(Output output) {
        return values.amount(
                "output.resistance",
                "dissipation factor of 1 % at the switching frequency",
                () -> output.capacitance() > 0
                        ? Rounding.twoDigits(CapacitorResistance.of(
                                DISSIPATION_FACTOR, demand.frequency(), Math.max(1e-12, output.capacitance())))
                        : 0);
    }
}
