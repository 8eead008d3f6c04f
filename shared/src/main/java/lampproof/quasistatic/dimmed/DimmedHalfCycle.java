package lampproof.quasistatic.dimmed;

import lampproof.design.Dimming;
import lampproof.design.Driver;
import lampproof.design.Filter;
import lampproof.design.Line;

/**
 * One half cycle of the line behind a dimmer, from given states.
 *
 * <p>The circuit before the converter (dimmer, filter, bleeder, bridge, bus) rings when the dimmer fires, and is followed in
 * {@value #STEPS} small steps between two of {@value #ANGLES} angles: first currents, then the voltages that they make
 * (semi-implicit Euler, which neither damps a ring nor feeds it). The converter is averaged.
 */
final class DimmedHalfCycle {

    /** Angles of the half cycle. */
    static final int ANGLES = 1000;

    private static final int STEPS = 40;

    /** At less than this a diode is about to conduct [A]. */
    private static final double LEAST_CURRENT = 1e-4;

    private final Driver driver;
    private final Filter filter;
    private final Dimming dimming;
    private final AveragedStage stage;
    private final DimmerSwitch dimmer;
    private final double fine;
    private final double senseTime;

    private DimmedSums sums;
    private DimmedRipple ripple;
    private double choke;
    private double terminal;
    private double filterCurrent;
    private double filtered;
    private double sensed;
    private double bleeder;
    private double bleederDrop;
    private double bridge;
    private double bridgeDrop;
    private double bus;
    private boolean conducting;

    DimmedHalfCycle(Driver driver, double bias, double senseTime) {
        Line line = driver.line();
        double coarse = line.halfPeriod() / ANGLES;
        this.driver = driver;
        this.senseTime = senseTime;
        this.filter = driver.filter();
        this.dimming = driver.dimming();
        this.dimmer = new DimmerSwitch(dimming, line);
        this.fine = coarse / STEPS;
        this.stage = new AveragedStage(driver, bias, coarse, fine);
    }

    /** Runs through the half cycle and leaves its end as the start of the next. */
    DimmedState run(DimmedState start, double setPoint) {
        begin(start, setPoint);
        for (int angle = 0; angle < ANGLES; angle++) {
            beginAngle();
            for (int step = 0; step < STEPS; step++) {
                step((angle * STEPS + step) * fine);
            }
            stage.endAngle(sums);
        }
        return new DimmedState(-choke, -terminal, -filterCurrent, -filtered, sensed, stage.state(bus));
    }

    /** The stress of the last run. */
    DimmedStress stress() {
        return sums.stress();
    }

    private void begin(DimmedState start, double setPoint) {
        sums = new DimmedSums(driver.line().halfPeriod());
        dimmer.begin();
        stage.begin(start.slow(), setPoint);
        choke = start.chokeCurrent();
        terminal = start.lampVoltage();
        filterCurrent = start.filterCurrent();
        filtered = start.filteredVoltage();
        sensed = start.sensedCurrent();
        bus = start.slow().busVoltage();
        bleeder = 0;
        bridge = 0;
        conducting = false;
    }

    private void beginAngle() {
        bleederDrop = pair(bleeder);
        bridgeDrop = pair(bridge);
        stage.beginAngle(bus);
        ripple = conducting ? stage.ripple() : DimmedRipple.NONE;
    }

    /** Forward voltage of two diodes of the bridge at a current [A]. */
    private double pair(double current) {
        return 2 * driver.bridge().junction(Math.max(LEAST_CURRENT, current));
    }

    private void step(double time) {
        double source = source(time);
        double triac = triac(time, source - terminal);
        double resistance = seriesResistance();
        double across = (terminal - filtered - resistance * filterCurrent) / (1 + resistance / filter.damping());
        filterCurrent += fine * (across - filter.resistance() * filterCurrent) / filter.inductance();
        double lamp = filterCurrent + across / filter.damping();
        sums.line(terminal, lamp, ripple, fine);
        terminal += source(time + fine) - source + fine * (triac - lamp) / dimming.capacitance();
        fillBus(lamp);
        sensed += fine * (bridge - sensed) / senseTime;
        sums.bus(bus + 0.5 * ripple.bus());
    }

    private double source(double time) {
        return driver.line().crest() * Math.sin(driver.line().angularFrequency() * time);
    }

    /** Current of the dimmer's switch; its choke takes the voltage across the dimmer. */
    private double triac(double time, double across) {
        double risen = choke + fine * across / dimming.inductance();
        double current = dimmer.closedAt(time) ? risen + across / dimming.damping() : 0;
        boolean open = dimmer.goesOut(time, current);
        double halfway = open ? 0 : current + 0.5 * (choke - risen);
        sums.triac(halfway, ripple.triac(), dimmer.watched(time));
        choke = open ? 0 : risen;
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
        bleeder = dimming.bleederCurrent(rectified, Math.max(0, rectified - bleederDrop), sensed);
        sums.bleeder(rectified * bleeder, fine);
        double into = (filtered < 0 ? -lamp : lamp) - bleeder;
        double taken = stage.taken(bus);
        if (conducting) {
            follow(side, rectified, into, taken);
        } else {
            hold(side, into, lamp, taken);
        }
    }

    /** Filter and bus capacitor are one, unless the bus has reached its floor. */
    private void follow(double side, double rectified, double into, double taken) {
        double capacitance = driver.busCapacitance();
        double rate = (into - taken) / (filter.capacitance() + capacitance);
        bridge = taken + capacitance * rate;
        double next = Math.max(0, rectified + fine * rate);
        filtered = side * next;
        double behind = Math.max(0, next - bridgeDrop);
        bus = held(behind);
        conducting = bridge > 0 && bus == behind;
    }

    private void hold(double side, double into, double lamp, double taken) {
        bridge = 0;
        filtered += fine * (side == 0 ? lamp : side * into) / filter.capacitance();
        bus = held(bus - fine * taken / driver.busCapacitance());
        double over = Math.abs(filtered) - bridgeDrop - bus;
        if (over > 0) {
            double share = filter.capacitance() / (filter.capacitance() + driver.busCapacitance());
            bus += over * share;
            filtered = Math.signum(filtered) * (bus + bridgeDrop);
            conducting = true;
        }
    }

    /** The bus voltage, which falls no lower than its floor: the output gives what it lacks. */
    private double held(double falling) {
        double lacking = Math.max(0, stage.floor() - falling);
        stage.giveBack(lacking * driver.busCapacitance());
        return falling + lacking;
    }
}
