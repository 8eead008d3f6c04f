package lampproof.quasistatic;

import lampproof.design.Dimming;
import lampproof.design.Driver;
import lampproof.design.Filter;
import lampproof.design.Line;
import lampproof.design.Topology;

/**
 * One half cycle of the line behind a dimmer, from given states.
 *
 * <p>The converter is averaged over its switching cycles and solved at {@value #ANGLES} angles, as without a dimmer; what
 * stands before it (dimmer, filter, bleeder, bridge, bus) rings when the dimmer fires, and is followed in
 * {@value #STEPS} small steps between two angles: currents first, then voltages.
 */
final class DimmedHalfCycle {

    /** Angles at which the converter is solved. */
    static final int ANGLES = 1000;

    private static final int STEPS = 40;
    private static final double STEERING_DROP = 0.8;

    private final Driver driver;
    private final Filter filter;
    private final Dimming dimming;
    private final Converter converter;
    private final OutputState output;
    private final PhaseSwitch phase;
    private final double fine;
    private final double senseTime;
    private final double bias;

    private DimmedSums sums;
    private double choke;
    private double terminal;
    private double filterCurrent;
    private double filtered;
    private double sensed;
    private double bus;
    private double outputVoltage;
    private double inputCurrent;
    private double outputCurrent;
    private double startCurrent;
    private double bridge;
    private double borrowed;
    private double through;
    private double busRipple;
    private double passed;
    private double passedByTriac;
    private boolean conducting;

    DimmedHalfCycle(Driver driver, double bias, double senseTime) {
        Line line = driver.line();
        this.driver = driver;
        this.bias = bias;
        this.senseTime = senseTime;
        this.filter = driver.filter();
        this.dimming = driver.fittings().dimming();
        double coarse = line.halfPeriod() / ANGLES;
        this.converter = new Converter(driver, coarse);
        this.output = new OutputState(driver.string(), driver.output().capacitance(), coarse);
        this.phase = new PhaseSwitch(dimming, line);
        this.fine = coarse / STEPS;
    }

    /** Runs through the half cycle and leaves its end as the start of the next. */
    DimmedState run(DimmedState start, double setPoint) {
        begin(start);
        for (int angle = 0; angle < ANGLES; angle++) {
            double middle = output.halfway(outputVoltage, outputCurrent);
            solve(middle, setPoint);
            for (int step = 0; step < STEPS; step++) {
                step((angle * STEPS + step) * fine);
            }
            feedString(middle);
        }
        SlowState slow = new SlowState(bus, outputVoltage, inputCurrent, outputCurrent, startCurrent);
        return new DimmedState(-choke, -terminal, -filterCurrent, -filtered, sensed, slow);
    }

    /** The stress of the last run. */
    DimmedStress stress() {
        return sums.stress();
    }

    private void begin(DimmedState start) {
        sums = new DimmedSums(driver.line().halfPeriod());
        phase.begin();
        choke = start.chokeCurrent();
        terminal = start.lampVoltage();
        filterCurrent = start.filterCurrent();
        filtered = start.filteredVoltage();
        sensed = start.sensedCurrent();
        bus = start.slow().busVoltage();
        outputVoltage = start.slow().outputVoltage();
        inputCurrent = start.slow().inputCurrent();
        outputCurrent = start.slow().outputCurrent();
        startCurrent = start.slow().inductorCurrent();
        bridge = 0;
        borrowed = 0;
        through = 0;
        conducting = false;
    }

    private void solve(double middle, double setPoint) {
        CellCycle cycle = converter.cycle(bus, middle, setPoint, startCurrent);
        double rate = cycle == null ? 0 : 1 / cycle.period();
        inputCurrent = cycle == null ? 0 : converter.inputCharge(cycle) * rate;
        outputCurrent = cycle == null ? 0 : converter.outputCharge(cycle) * rate;
        startCurrent = cycle == null ? 0 : cycle.startCurrent();
        boolean ripples = conducting && cycle != null && canSwitch(middle);
        busRipple = ripples ? converter.rippleCharge(cycle) / (driver.busCapacitance() + filter.capacitance()) : 0;
        passed = ripples ? passedSwing(cycle.period()) : 0;
        passedByTriac = passed == 0 ? 0 : passed * triacShare(cycle.period());
        sums.ripple(passed * passed / 12, STEPS * fine);
    }

    /** A bus above the output of a step-up converter leaves no time in which the inductor could reset. */
    private boolean canSwitch(double output) {
        return driver.topology() == Topology.STEP_DOWN || bus < output;
    }

    /** What a bus above the output of a step-up converter drives straight through inductor and diode [A]. */
    private double straightThrough() {
        double over = bus - outputVoltage - STEERING_DROP;
        boolean stepUp = driver.topology() == Topology.STEP_UP;
        through = stepUp ? Math.max(0, through + fine * over / driver.inductor().inductance()) : 0;
        borrowed -= fine * through;
        return through;
    }

    /** Swing of the lamp current that the bus ripple drives through damping and choke [A]. */
    private double passedSwing(double period) {
        double reactance = 2 * Math.PI * filter.inductance() / period;
        return busRipple * Math.hypot(1 / filter.damping(), 1 / reactance);
    }

    /** Part of it that does not flow through the noise capacitor: choke across its damping, against the capacitor. */
    private double triacShare(double period) {
        double choke = 2 * Math.PI * dimming.inductance() / period;
        double capacitor = period / (2 * Math.PI * dimming.capacitance());
        double part = choke / (choke * choke + dimming.damping() * dimming.damping());
        double real = choke * dimming.damping() * part;
        double imaginary = dimming.damping() * dimming.damping() * part;
        return capacitor / Math.hypot(real, imaginary - capacitor);
    }

    private void feedString(double middle) {
        double before = outputVoltage - borrowed / driver.output().capacitance();
        borrowed = 0;
        outputVoltage = output.next(before, outputCurrent);
        sums.string(middle, output.stringCurrent(before, outputVoltage, outputCurrent), STEPS * fine);
    }

    private void step(double time) {
        double source = source(time);
        double triac = triac(time, source - terminal);
        double resistance = seriesResistance();
        double across = (terminal - filtered - resistance * filterCurrent) / (1 + resistance / filter.damping());
        double lamp = filterCurrent + across / filter.damping();
        sums.line(terminal, lamp, conducting ? passed : 0, fine);
        filterCurrent += fine * (across - filter.resistance() * filterCurrent) / filter.inductance();
        terminal += source(time + fine) - source + fine * (triac - lamp) / dimming.capacitance();
        fillBus(lamp);
        sensed += fine * (bridge - sensed) / senseTime;
        sums.bus(bus + (conducting ? 0.5 * busRipple : 0));
    }

    private double source(double time) {
        return driver.line().crest() * Math.sin(driver.line().angularFrequency() * time);
    }

    /** Current of the dimmer's switch; its choke takes the voltage across the dimmer. */
    private double triac(double time, double across) {
        double current = phase.closedAt(time) ? choke + across / dimming.damping() : 0;
        boolean open = phase.goesOut(time, current);
        choke = open ? 0 : choke + fine * across / dimming.inductance();
        sums.triac(open ? 0 : current, conducting ? passedByTriac : 0, phase.watched(time));
        return open ? 0 : current;
    }

    private double seriesResistance() {
        return driver.line().resistance()
                + filter.fuseResistance()
                + (conducting ? 2 * driver.bridge().resistance() : 0);
    }

    private void fillBus(double lamp) {
        double side = Math.signum(filtered);
        double rectified = Math.abs(filtered);
        double bleeder = dimming.bleederCurrent(Math.max(0, rectified - STEERING_DROP), sensed);
        sums.bleeder(rectified * bleeder, fine);
        double into = (filtered < 0 ? -lamp : lamp) - bleeder;
        double taken = inputCurrent + bias * Math.min(1, bus / Dimming.FULL_CURRENT_FROM) + straightThrough();
        if (conducting) {
            follow(side, rectified, into, taken);
        } else {
            hold(side, into, lamp, taken);
        }
    }

    /** Filter and bus capacitor are one. */
    private void follow(double side, double rectified, double into, double taken) {
        double capacitance = driver.busCapacitance();
        double rate = (into - taken) / (filter.capacitance() + capacitance);
        bridge = taken + capacitance * rate;
        conducting = bridge > 0;
        double next = Math.max(0, rectified + fine * rate);
        filtered = side * next;
        bus = Math.max(0, next - drop());
    }

    private void hold(double side, double into, double lamp, double taken) {
        bridge = 0;
        filtered += fine * (side == 0 ? lamp : side * into) / filter.capacitance();
        bus = held(bus - fine * taken / driver.busCapacitance());
        double over = Math.abs(filtered) - drop() - bus;
        if (over > 0) {
            double share = filter.capacitance() / (filter.capacitance() + driver.busCapacitance());
            bus += over * share;
            filtered = Math.signum(filtered) * (bus + drop());
            conducting = true;
        }
    }

    /** A step-down converter does not let the bus fall below its output: the output capacitor then feeds the bus. */
    private double held(double falling) {
        double floor = driver.topology() == Topology.STEP_UP ? 0 : Math.max(0, outputVoltage - STEERING_DROP);
        borrowed +=
                Math.max(0, floor - falling) * (driver.topology() == Topology.STEP_UP ? 0 : driver.busCapacitance());
        return Math.max(floor, falling);
    }

    private double drop() {
        return 2 * driver.bridge().junction(sensed);
    }
}
