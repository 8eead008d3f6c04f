package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Filter;
import lampproof.design.Line;

/**
 * One pass through the line half cycle, from given slow states.
 *
 * <p>Midpoint rule over {@value #STEPS} equal angles. While the bridge conducts, the bus follows the line less the
 * drops; when the bus would have to give current back, the bridge blocks and the converter empties the bus capacitor.
 */
final class HalfCycle {

    /** Steps of the half cycle. */
    static final int STEPS = 128;

    /** Steps of a coarse half cycle. */
    static final int FEW_STEPS = 32;

    private static final double[] SINES = sines(STEPS);
    private static final double[] FEW_SINES = sines(FEW_STEPS);

    private final Driver driver;
    private final Converter converter;
    private final OutputResponse output;
    private final double[] sines;
    private final double step;
    private final double lineSlope;
    private final double resistance;

    private double setPoint;
    private double busVoltage;
    private double outputVoltage;
    private double bridgeCurrent;
    private double inputCurrent;
    private double outputCurrent;
    private double startCurrent;
    private double stringCharge;
    private boolean conducting;
    private CellCycle cycle;

    HalfCycle(Driver driver) {
        this(driver, SINES);
    }

    /** The same in fewer steps, for the beginning of a search. */
    static HalfCycle coarse(Driver driver) {
        return new HalfCycle(driver, FEW_SINES);
    }

    private HalfCycle(Driver driver, double[] sines) {
        Line line = driver.line();
        Filter filter = driver.filter();
        this.driver = driver;
        this.sines = sines;
        this.step = line.halfPeriod() / sines.length;
        this.converter = new Converter(driver, step);
        this.output = new OutputResponse(driver.string(), driver.output().capacitance(), step);
        this.lineSlope = line.crest() * line.angularFrequency();
        this.resistance = line.resistance()
                + filter.seriesResistance()
                + 2 * driver.bridge().resistance();
    }

    /** Sine of the angle in the middle of each of some steps. */
    private static double[] sines(int steps) {
        double[] sines = new double[steps];
        for (int k = 0; k < steps; k++) {
            sines[k] = Math.sin((k + 0.5) * Math.PI / steps);
        }
        return sines;
    }

    /** Angle in the middle of a step [rad]. */
    private double angle(int k) {
        return (k + 0.5) * Math.PI / sines.length;
    }

    /** Cosine of that angle: the sine a quarter of a turn later. */
    private double cosine(int k) {
        int later = k + sines.length / 2;
        return later < sines.length ? sines[later] : -sines[later - sines.length];
    }

    /** Runs through the half cycle and passes on each angle; yields the start of the next half cycle. */
    SlowState run(SlowState start, double newSetPoint, PointSink sink) {
        setPoint = newSetPoint;
        busVoltage = start.busVoltage();
        outputVoltage = start.outputVoltage();
        inputCurrent = start.inputCurrent();
        outputCurrent = start.outputCurrent();
        startCurrent = start.inductorCurrent();
        conducting = false;
        bridgeCurrent = 0;
        stringCharge = 0;
        for (int k = 0; k < sines.length; k++) {
            step(k, sink);
        }
        return new SlowState(busVoltage, outputVoltage, inputCurrent, outputCurrent, startCurrent);
    }

    /** Mean string current of the last run [A]. */
    double meanStringCurrent() {
        return stringCharge / sines.length;
    }

    private void step(int k, PointSink sink) {
        double middle = output.halfway(outputVoltage, outputCurrent);
        double rectified = driver.line().crest() * sines[k];
        double offered = rectified - drop(bridgeCurrent);
        double held = heldVoltage(middle);
        if (offered > held) {
            feed(k, offered, held, middle);
        } else {
            hold(held);
        }
        double before = outputVoltage;
        outputVoltage = output.next(before, outputCurrent);
        double string = output.stringCurrent(before, outputVoltage, outputCurrent);
        stringCharge += string;
        if (sink != null) {
            double displacement = driver.filter().capacitance() * lineSlope * cosine(k);
            sink.accept(new AnglePoint(
                    angle(k),
                    rectified,
                    bridgeCurrent + displacement,
                    bridgeCurrent,
                    busVoltage,
                    cycle == null ? 0 : converter.busRipple(driver, cycle, conducting),
                    inputCurrent,
                    middle,
                    outputCurrent,
                    string,
                    cycle));
        }
    }

    /** Voltage that the bus capacitor would have if the bridge blocked, by Heun's rule [V]. */
    private double heldVoltage(double outputMiddle) {
        double slope = step / driver.busCapacitance();
        double first = busVoltage - slope * inputCurrent;
        if (conducting) {
            return first;
        }
        double before = inputCurrent;
        solve(first, outputMiddle);
        return Math.max(0, busVoltage - slope * 0.5 * (before + inputCurrent));
    }

    private void feed(int k, double offered, double held, double outputMiddle) {
        solve(offered, outputMiddle);
        boolean before = conducting;
        bridgeCurrent = before ? inputCurrent + driver.busCapacitance() * lineSlope * cosine(k) : recharge(offered);
        conducting = bridgeCurrent > 0;
        if (conducting) {
            busVoltage = before ? offered : Math.max(held, offered - resistance * bridgeCurrent);
        } else {
            hold(held);
        }
    }

    /** Current of a bridge that has just taken over [A]: what it charges the bus capacitor with drops in its own path. */
    private double recharge(double offered) {
        double perVolt = driver.busCapacitance() / step;
        return (inputCurrent + perVolt * (offered - busVoltage)) / (1 + perVolt * resistance);
    }

    private void hold(double held) {
        busVoltage = held;
        bridgeCurrent = 0;
        conducting = false;
    }

    private double drop(double current) {
        return resistance * current + 2 * driver.bridge().junction(current);
    }

    private void solve(double bus, double outputMiddle) {
        cycle = converter.cycle(bus, outputMiddle, setPoint, startCurrent, cycle);
        if (cycle == null) {
            inputCurrent = 0;
            outputCurrent = 0;
            startCurrent = 0;
            return;
        }
        double rate = 1 / cycle.period();
        inputCurrent = converter.inputCharge(cycle) * rate;
        outputCurrent = converter.outputCharge(cycle) * rate;
        startCurrent = cycle.startCurrent();
    }

    /** Takes the points of a run, in the order of the angle. */
    @FunctionalInterface
    interface PointSink {

        /** Takes one point. */
        void accept(AnglePoint point);
    }
}
