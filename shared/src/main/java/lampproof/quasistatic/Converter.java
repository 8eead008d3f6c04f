package lampproof.quasistatic;

import lampproof.design.Driver;
import lampproof.design.Rectifier;
import lampproof.design.Topology;

/** A cell between bus and output. */
public final class Converter {

    /** More than this share of a voltage cannot be a small ripple on it. */
    private static final double MOST_SWING = 0.5;

    private final boolean stepUp;
    private final Rectifier diode;
    private final SwitchingCell cell;
    private final ControlRule rule;
    private final CellRun run;
    private final double step;
    private final BusStiffness stiffness;

    /**
     * The converter of a driver.
     *
     * @param driver the driver
     * @param step time from one line angle to the next [s]
     */
    public Converter(Driver driver, double step) {
        this.step = step;
        this.stiffness = BusStiffness.of(driver);
        this.stepUp = driver.topology() == Topology.STEP_UP;
        this.diode = driver.diode();
        this.cell = SwitchingCell.of(driver);
        this.rule = new ControlRule(driver.control(), driver.line().crest());
        this.run = new CellRun(cell, rule.offTime());
    }

    /**
     * The cycle at one line angle; null when the bus cannot drive the inductor.
     *
     * @param busVoltage bus voltage [V]
     * @param outputVoltage voltage of the output capacitor [V]
     * @param setPoint on-time [s] or peak current [A]
     * @param guess start current at the line angle before [A]
     * @param before the cycle at the line angle before; null when there was none
     */
    CellCycle cycle(double busVoltage, double outputVoltage, double setPoint, double guess, CellCycle before) {
        return cycle(busVoltage, busVoltage, outputVoltage, setPoint, guess, before);
    }

    /** The same while a shaped reference still follows another bus voltage [V] than that of now. */
    public CellCycle cycle(
            double busVoltage, double followed, double outputVoltage, double setPoint, double guess, CellCycle before) {
        if (!(source(busVoltage, outputVoltage) > 0)) {
            return null;
        }
        run.follow(before == null ? CellCycle.NONE : before);
        next(busVoltage, followed, outputVoltage, setPoint, guess);
        double image = run.nextStart();
        boolean settled = !run.isContinuous();
        next(busVoltage, followed, outputVoltage, setPoint, image);
        if (settled || !run.isContinuous()) {
            return run.cycle();
        }
        next(busVoltage, followed, outputVoltage, setPoint, after(step / run.period(), guess, image, run.nextStart()));
        return run.cycle();
    }

    private double source(double bus, double output) {
        return stepUp ? bus : bus - output;
    }

    /** Diode drop and swing of the bus are those of the cycle before. */
    private void next(double bus, double followed, double output, double setPoint, double start) {
        double drop = diode.junction(0.5 * run.peak());
        supply(source(bus, output), (stepUp ? output : bus) + drop);
        run.next(start, rule.onTime(cell, run.source(), followed, start, setPoint));
    }

    private void supply(double source, double top) {
        BusSwing swing = BusSwing.of(run.on(), run.diode(), run.period(), stiffness, stepUp);
        double reset = top - source;
        run.between(new CellSupply(
                source + Math.max(swing.on(), -MOST_SWING * source),
                swing.onDroop(),
                top,
                stepUp ? reset - Math.min(swing.fall(), MOST_SWING * reset) : reset,
                stepUp ? swing.fallDroop() : 0,
                stepUp ? reset - Math.min(swing.fallEnd(), MOST_SWING * reset) : reset,
                source + swing.turnOn()));
    }

    /**
     * Where a current goes in some cycles of continuous mode, from its image and the image of that; exact for a straight map.
     *
     * <p>A map that turns a deviation round has settled; one that keeps most of it, as fixed duty does, creeps. None makes
     * it grow: where the two images say so, their difference is lost in rounding or in a change of mode.
     */
    private static double after(double cycles, double current, double image, double imageOfImage) {
        double first = image - current;
        double kept = Math.abs(first) > 1e-12 ? Math.min(1, (imageOfImage - image) / first) : 0;
        if (kept <= 0) {
            return current + first / (1 - kept);
        }
        boolean straight = Math.abs(kept - 1) < 1e-9;
        return current + first * (straight ? cycles : (Math.pow(kept, cycles) - 1) / (kept - 1));
    }

    /** Charge that a cycle takes from the bus [C]. */
    public double inputCharge(CellCycle cycle) {
        return stepUp ? cycle.inductorCharge() : cycle.switchCharge();
    }

    /** Charge that moves in and out of the bus capacitor within a cycle [C]. */
    public double rippleCharge(CellCycle cycle) {
        double mean = inputCharge(cycle) / cycle.period();
        return stepUp ? triangleAbove(cycle, mean) : cycle.on().charge() - mean * cycle.onTime();
    }

    /** Swing of the bus within a cycle [V]; while the bridge conducts, the filter capacitor takes its part. */
    double busRipple(Driver driver, CellCycle cycle, boolean conducting) {
        double filter = conducting ? driver.filter().capacitance() : 0;
        return rippleCharge(cycle) / (driver.busCapacitance() + filter);
    }

    /** Area of a triangle of current above its mean; an eighth of swing times period where it never rests [C]. */
    static double triangleAbove(CellCycle cycle, double mean) {
        double swing = cycle.topCurrent() - cycle.trough();
        double base = cycle.onTime() + cycle.rise().time() + cycle.diode().time();
        double above = (cycle.topCurrent() - mean) / swing;
        return 0.5 * swing * base * above * above;
    }

    /** Charge that a cycle gives to output capacitor and string [C]. */
    public double outputCharge(CellCycle cycle) {
        return stepUp ? cycle.diodeCharge() : cycle.inductorCharge();
    }
}
