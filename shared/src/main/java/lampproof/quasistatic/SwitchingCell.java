package lampproof.quasistatic;

import lampproof.design.Driver;

/**
 * The inductor and the node that switch and diode take turns to hold.
 *
 * <p>Currents in resistance are taken as straight lines with the mean current deciding the drop, which is right to third
 * order in time over L/R.
 *
 * @param inductance L [H]
 * @param onResistance resistance of the loop while the switch conducts [Ohm]
 * @param offResistance resistance of the loop while the diode conducts [Ohm]
 * @param capacitance C at the node [F]
 * @param impedance sqrt(L/C) [Ohm]
 * @param angularFrequency 1/sqrt(LC) [rad/s]
 */
record SwitchingCell(
        double inductance,
        double onResistance,
        double offResistance,
        double capacitance,
        double impedance,
        double angularFrequency) {

    static SwitchingCell of(Driver driver) {
        double inductance = driver.inductor().inductance();
        double capacitance = driver.powerSwitch().capacitance();
        double winding = driver.inductor().resistance();
        return new SwitchingCell(
                inductance,
                winding + driver.powerSwitch().resistance() + driver.senseResistance(),
                winding + driver.diode().resistance(),
                capacitance,
                Math.sqrt(inductance / capacitance),
                1 / Math.sqrt(inductance * capacitance));
    }

    /** Current after the switch has conducted for a time [A]. */
    double currentAfter(double start, double source, double time) {
        double damping = 0.5 * onResistance * time / inductance;
        return (start * (1 - damping) + source * time / inductance) / (1 + damping);
    }

    /** Time until the switch current has risen to a level that falls with a slope [A/s]; infinite when it never does. */
    double timeToReach(double level, double slope, double start, double source) {
        double drive = source - 0.5 * onResistance * (start + level) + inductance * slope;
        return drive > 0 ? inductance * Math.max(0, level - start) / drive : Double.POSITIVE_INFINITY;
    }

    /** The cycle that begins with a current, keeps the switch on for a time, and ends as the off-time rule says. */
    CellCycle cycle(CellSupply supply, double start, double onTime, OffTime offTime) {
        double source = supply.source();
        double peak = currentAfter(start, source, onTime);
        if (!(peak > 0)) {
            return resting(start, onTime, peak, offTime.after(0, onTime));
        }
        double landing = peak * peak + (2 * source - supply.swing()) * supply.swing() / (impedance * impedance);
        return landing > 0
                ? conducting(supply, start, onTime, peak, Math.sqrt(landing), offTime)
                : swinging(source, start, onTime, peak, offTime);
    }

    /** The diode takes over at a landing current. */
    private CellCycle conducting(
            CellSupply supply, double start, double onTime, double peak, double landing, OffTime offTime) {
        double charge = capacitance * supply.swing();
        double rise = riseTime(supply.source(), supply.swing(), peak, landing);
        double top = Math.hypot(peak, supply.source() / impedance);
        double reset = supply.swing() - supply.source();
        double fall = inductance * landing / (reset + 0.5 * offResistance * landing);
        double off = offTime.after(rise + fall, onTime);
        if (off < rise + fall) {
            double time = Math.max(0, off - rise);
            double damping = 0.5 * offResistance * time / inductance;
            double end = (landing * (1 - damping) - reset * time / inductance) / (1 + damping);
            return new CellCycle(
                    start, onTime, peak, top, rise, landing, time, end, charge, IdleRing.none(supply.swing()));
        }
        IdleRing ring = IdleRing.from(this, supply.source(), supply.swing(), off - rise - fall);
        return new CellCycle(start, onTime, peak, top, rise, landing, fall, 0, charge, ring);
    }

    /** The current is too small to lift the node to the diode: the node swings up and down again. */
    private CellCycle swinging(double source, double start, double onTime, double peak, OffTime offTime) {
        double crest = source + Math.hypot(source, peak * impedance);
        double charge = capacitance * crest;
        double rise = riseTime(source, crest, peak, 0);
        IdleRing ring = IdleRing.from(this, source, crest, Math.max(0, offTime.after(rise, onTime) - rise));
        return new CellCycle(start, onTime, peak, Math.hypot(peak, source / impedance), rise, 0, 0, 0, charge, ring);
    }

    /** Time in which the resonance of inductor and node lifts the node from zero [s]. */
    private double riseTime(double source, double swing, double peak, double landing) {
        if (landing > 0.9 * peak) {
            return 2 * capacitance * swing / (peak + landing);
        }
        double amplitude = Math.hypot(source, peak * impedance);
        double top = Math.min(1, (swing - source) / amplitude);
        return (Math.asin(top) + Math.asin(source / amplitude)) / angularFrequency;
    }

    /** The on-time was too short to turn a negative current round: the body diode carries on. */
    private static CellCycle resting(double start, double onTime, double peak, double off) {
        return new CellCycle(start, onTime, peak, 0, 0, 0, 0, 0, 0, new IdleRing(off, 0, 0, 0, 0));
    }
}
