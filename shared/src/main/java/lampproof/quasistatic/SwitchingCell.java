package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.physics.SoftRecovery;

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
 * @param recoveryTime recovered charge of the diode over its current at turn-off [s]
 */
record SwitchingCell(
        double inductance,
        double onResistance,
        double offResistance,
        double capacitance,
        double impedance,
        double angularFrequency,
        double recoveryTime) {

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
                1 / Math.sqrt(inductance * capacitance),
                driver.diode().recoveryTime());
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

    /** How far the node swings about E when it starts from zero with a current [V]; without the guards of hypot, ten times as fast. */
    double amplitude(double source, double current) {
        double lift = current * impedance;
        return Math.sqrt(source * source + lift * lift);
    }

    /** The cycle that begins with a current, keeps the switch on for a time, and ends as the off-time rule says. */
    CellCycle cycle(CellSupply supply, double start, double onTime, OffTime offTime) {
        double source = supply.source();
        double peak = currentAfter(start, source, onTime);
        Ramp on = ramp(start, peak, onTime, onResistance, supply.sourceDroop());
        if (!(peak > 0)) {
            return resting(on, offTime.after(0, onTime));
        }
        double landing = peak * peak + (2 * source - supply.swing()) * supply.swing() / (impedance * impedance);
        return landing > 0 ? conducting(supply, on, Math.sqrt(landing), offTime) : swinging(source, on, offTime);
    }

    /** The diode takes over at a landing current. */
    private CellCycle conducting(CellSupply supply, Ramp on, double landing, OffTime offTime) {
        double peak = on.to();
        NodeRise rise = NodeRise.of(this, supply.source(), supply.swing(), peak, landing);
        double reset = supply.reset();
        double fall = inductance * landing / (reset + 0.5 * offResistance * landing);
        double off = offTime.after(rise.time() + fall, on.time());
        boolean cut = off < rise.time() + fall;
        double end = cut ? currentFalling(landing, reset, Math.max(0, off - rise.time())) : 0;
        double time = cut ? off - rise.time() : fall;
        Ramp diode = ramp(landing, end, time, offResistance, supply.resetGrowth());
        IdleRing ring = cut
                ? IdleRing.none(supply.swing())
                : IdleRing.from(this, supply.idle(), supply.idle() + supply.ring(), off - rise.time() - fall);
        SoftRecovery recovery = cut ? SoftRecovery.after(landing, end, time, recoveryTime) : SoftRecovery.NONE;
        return new CellCycle(on, rise, amplitude(supply.source(), peak) / impedance, diode, ring, recovery);
    }

    /** The current is too small to lift the node to the diode: the node swings up and down again. */
    private CellCycle swinging(double source, Ramp on, OffTime offTime) {
        double peak = on.to();
        double amplitude = amplitude(source, peak);
        double crest = source + amplitude;
        NodeRise rise = NodeRise.of(this, source, crest, peak, 0);
        IdleRing ring =
                IdleRing.from(this, source, crest, Math.max(0, offTime.after(rise.time(), on.time()) - rise.time()));
        return new CellCycle(on, rise, amplitude / impedance, Ramp.NONE, ring, SoftRecovery.NONE);
    }

    private double currentFalling(double from, double reset, double time) {
        double damping = 0.5 * offResistance * time / inductance;
        return (from * (1 - damping) - reset * time / inductance) / (1 + damping);
    }

    /** A voltage that drives less and less bends the ramp as resistance does. */
    private Ramp ramp(double from, double to, double time, double resistance, double droop) {
        double bend = from == to ? 0 : droop / (to - from);
        return new Ramp(from, to, Math.max(0, time), (resistance + bend) / inductance);
    }

    /** The on-time was too short to turn a negative current round: the body diode carries on. */
    private static CellCycle resting(Ramp on, double off) {
        return new CellCycle(on, NodeRise.NONE, 0, Ramp.NONE, new IdleRing(off, 0, 0, 0, 0), SoftRecovery.NONE);
    }
}
