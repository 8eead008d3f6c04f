package lampproof.design;

import static lampproof.physics.PreferredSeries.E12;
import static lampproof.physics.PreferredSeries.E6;

import lampproof.physics.CapacitorResistance;

/** Chooses the filter, the bridge and the bus capacitor between mains and converter. */
final class FilterSizing {

    /** A resistor that carries next to no current [Ohm]. */
    private static final double NOTHING_TO_DAMP = 1e6;

    /** Classes of film capacitors [V]. */
    private static final double[] CLASSES = {250, 310, 400, 450, 500, 630, 800, 1000};

    private static final double DISSIPATION_FACTOR = 0.01;

    private final DesignValues values;
    private final Demand demand;

    FilterSizing(DesignValues values, Demand demand) {
        this.values = values;
        this.demand = demand;
    }

    double busCapacitance() {
        return values.amount(
                "bus.capacitance",
                "10 % of the capacitance that shifts the line current by 45 deg, E6",
                () -> E6.nearest(0.1 * displacement()));
    }

    /** Capacitance whose reactive current equals the active one [F]. */
    private double displacement() {
        Line line = demand.line();
        return demand.power() / (line.voltage() * line.voltage() * line.angularFrequency());
    }

    Filter filter(double bus) {
        double voltage = demand.line().voltage();
        double fuse = values.amount(
                "filter.fuse_resistance",
                "loses 0.2 % of the power, E12",
                () -> E12.nearest(0.002 * voltage * voltage / demand.power()));
        double capacitance = values.amount(
                "filter.capacitance", "half of bus.capacitance, E6", () -> bus > 0 ? E6.nearest(0.5 * bus) : 0);
        double corner = 2 * Math.PI * demand.frequency() / 6;
        double inductance = values.amount(
                "filter.inductance",
                "corner frequency with both capacitors at one sixth of the switching frequency, E6",
                () -> bus + capacitance > 0 ? E6.up(1 / (corner * corner * (bus + capacitance))) : 0);
        double resistance =
                values.amount("filter.resistance", "3 Ohm for each mH", () -> Rounding.twoDigits(3e3 * inductance));
        double damping = values.amount(
                "filter.damping",
                "1.5 times the characteristic impedance, E12",
                () -> damping(inductance, bus + capacitance));
        return new Filter(fuse, inductance, resistance, damping, capacitance);
    }

    /** Without a choke, or with nothing that it could ring with, no resistor has anything to damp. */
    private static double damping(double inductance, double capacitance) {
        return inductance > 0 && capacitance > 0
                ? E12.nearest(1.5 * Math.sqrt(inductance / capacitance))
                : NOTHING_TO_DAMP;
    }

    /** Tangent of the loss angle of the filter capacitor [-]. */
    double dissipationFactor() {
        return values.amount(
                "filter.dissipation_factor", "1 % at the line frequency: polyester film", () -> DISSIPATION_FACTOR);
    }

    /** Series resistance of a bus capacitor [F]; in [Ohm]. */
    double busResistance(double bus) {
        return values.amount(
                "bus.resistance",
                "dissipation factor of 1 % at the switching frequency: polyester film",
                () -> Rounding.twoDigits(
                        CapacitorResistance.of(DISSIPATION_FACTOR, demand.frequency(), Math.max(1e-12, bus))));
    }

    Rectifier bridge() {
        values.amount(
                "bus.voltage_rating",
                "crest of the highest line at derating.capacitor; crest plus surge at the full rating; next film class",
                () -> Rounding.rating(busStress(), CLASSES));
        values.amount(
                "bridge.voltage_rating", RatingClasses.RULE, () -> RatingClasses.bridgeVoltageClass(values, demand));
        values.amount(
                "bridge.current_rating",
                "half the mean line current at the lowest line with a margin of 10 % at derating.current, next class",
                () -> RatingClasses.currentClass(
                        values, 0.5 * demand.power() / demand.lines().least()));
        return DiodeSizing.rectifier(
                values, "bridge", 0.8, demand.power() / demand.line().voltage());
    }

    private double busStress() {
        double crest = demand.highestCrest();
        return Math.max(crest / Derating.of(values).capacitor(), crest + LetThroughVoltage.of(values));
    }
}
