package lampproof.design;

import lampproof.spec.Spec;

/**
 * Chooses the values that the spec does not give, part by part, by rules of thumb of the trade (common practice, no source) on the
 * lossless converter at the crest of the line.
 */
public final class Sizing {

    /** What wiring and bridge bring in place of a bus capacitor that the spec sets to zero [F]. */
    private static final double LEAST_BUS = 1e-13;

    private static final double BIAS = 0.3e-3;

    private final DesignValues values;
    private final Demand demand;

    private Sizing(Spec spec) {
        values = new DesignValues(spec);
        demand = Demand.of(values);
    }

    /**
     * The design of a spec, every value given or chosen.
     *
     * @throws lampproof.fault.UserFault when physics forbids the combination, the spec names an unknown part, or no string
     *     has the points given
     */
    public static Design of(Spec given) {
        Spec spec = StringPoints.fitted(given);
        Feasibility.require(spec);
        Sizing sizing = new Sizing(spec);
        Driver driver = sizing.driver();
        return new Design(driver, sizing.values.all());
    }

    private Driver driver() {
        FilterSizing mains = new FilterSizing(values, demand);
        double bus = mains.busCapacitance();
        Filter filter = mains.filter(bus);
        Rectifier bridge = mains.bridge();
        InductorSizing magnetics = new InductorSizing(values, demand);
        Winding winding = magnetics.winding();
        SwitchSizing silicon = new SwitchSizing(values, demand);
        PowerSwitch powerSwitch = silicon.powerSwitch();
        OutputSizing storage = new OutputSizing(values, demand);
        Output output = storage.output();
        return new Driver(
                demand.topology(),
                demand.line(),
                filter,
                bridge,
                Math.max(LEAST_BUS, bus),
                magnetics.inductor(winding),
                powerSwitch,
                DiodeSizing.diode(values, demand),
                silicon.senseResistance(),
                output,
                demand.string(),
                new ControlSizing(values, demand).control(),
                silicon.edges(powerSwitch),
                new CapacitorLosses(storage.resistance(output), mains.dissipationFactor(), mains.busResistance(bus)),
                values.amount("bias.current", "0.3 mA, without the gate charge", () -> BIAS),
                DimmingSizing.dimming(values, demand.line()),
                new HeatSizing(values, demand).heat(),
                exposure());
    }

    /** The faults and the surge that the decks apply. */
    private Exposure exposure() {
        values.keyword("decks.detail", "normal: the tolerances of the figures hold for it", Detail.NORMAL);
        return new ExposureSizing(values, demand).exposure();
    }
}
