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
 * @param recoveryTime recovered charge of the diode over its current at turn-off [s]
 */
public record SwitchingCell(
        double inductance,
        double onResistance,
        double offResistance,
        double capacitance,
        double impedance,
        double angularFrequency,
        double recoveryTime) {

    public static SwitchingCell of(Driver driver) {
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
        CellRun run = new CellRun(this, offTime);
        run.between(supply);
        run.next(start, onTime);
        return run.cycle();
    }

    /** Time in which a reset voltage takes a current down to zero [s]. */
    double fallTime(double current, double reset) {
        return inductance * current / (reset + 0.5 * offResistance * current);
    }

    /** Current after a reset voltage has taken it down for a time [A]. */
    double currentFalling(double from, double reset, double time) {
        double damping = 0.5 * offResistance * time / inductance;
        return (from * (1 - damping) - reset * time / inductance) / (1 + damping);
    }

    /** Decay of the ramp while the switch conducts, under a voltage that falls by so much [V]; in [1/s]. */
    double onDecay(double from, double to, double droop) {
        return decay(from, to, onResistance, droop);
    }

    /** Decay of the ramp while the diode conducts, under a voltage that grows by so much [V]; in [1/s]. */
    double offDecay(double from, double to, double growth) {
        return decay(from, to, offResistance, growth);
    }

    /** A voltage that drives less and less bends the ramp as resistance does. */
    private double decay(double from, double to, double resistance, double droop) {
        double bend = from == to ? 0 : droop / (to - from);
        return (resistance + bend) / inductance;
    }
}
