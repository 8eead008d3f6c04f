package lampproof.design;

import static lampproof.physics.PreferredSeries.E24;

/** Chooses the power switch and the resistor that senses its current. */
final class SwitchSizing {

    private static final String DIODE = "diode.capacitance";

    private final DesignValues values;
    private final Demand demand;

    SwitchSizing(DesignValues values, Demand demand) {
        this.values = values;
        this.demand = demand;
    }

    PowerSwitch powerSwitch() {
        double resistance = values.amount(
                "switch.resistance",
                "loses 0.4 % of the power; 1 Ohm to 10 Ohm",
                () -> Rounding.twoDigits(Math.max(1, Math.min(10, losingLittle()))));
        double capacitance = capacitance(resistance);
        double diode = values.isOpen(DIODE) ? 0 : values.given(DIODE);
        double besides = values.isOpen(DIODE) ? Math.min(capacitance, PowerSwitch.DIODE_AND_WINDING) : diode;
        values.amount("switch.voltage_rating", RatingClasses.RULE, () -> RatingClasses.voltageClass(values, demand));
        return new PowerSwitch(resistance, capacitance + diode, besides);
    }

    /** A diode of which the capacitance is given is not counted with the switch. */
    private double capacitance(double resistance) {
        double silicon = resistance > 0 ? 100e-12 / resistance : 0;
        return values.isOpen(DIODE)
                ? values.amount(
                        "switch.capacitance",
                        "100 pF Ohm of silicon plus 10 pF of diode and winding",
                        () -> Rounding.twoDigits(silicon + PowerSwitch.DIODE_AND_WINDING))
                : values.amount(
                        "switch.capacitance",
                        "with diode.capacitance given: 100 pF Ohm of silicon",
                        () -> Rounding.twoDigits(silicon));
    }

    private double losingLittle() {
        CrestPoint crest = CrestPoint.typical(demand);
        return 0.004 * demand.power() / (crest.lineRms() * crest.lineRms() * crest.duty());
    }

    double senseResistance() {
        return values.amount(
                "sense.resistance",
                "0.5 V at the crest peak current, E24",
                () -> E24.nearest(0.5 / CrestPoint.typical(demand).peak()));
    }

    Edges edges(PowerSwitch powerSwitch) {
        double silicon = 0.04e-9 * RatingClasses.voltageClass(values, demand);
        double charge = values.amount(
                "switch.gate_charge",
                "0.04 nC Ohm of silicon for each volt of its class, plus 1 nC",
                () -> Rounding.twoDigits(silicon / Math.max(0.1, powerSwitch.resistance()) + 1e-9));
        double voltage = values.amount("switch.gate_voltage", "10 V", () -> 10);
        double time = values.amount("switch.transition_time", "30 ns: a compromise of loss and noise", () -> 30e-9);
        double snubber = values.amount("switch.snubber_capacitance", "0 F: no snubber", () -> 0);
        return new Edges(charge, voltage, time, DiodeSizing.recoveryCharge(values, demand), snubber);
    }
}
