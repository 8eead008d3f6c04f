package lampproof.quasistatic;

import java.util.ArrayList;
import java.util.List;
import lampproof.design.Driver;
import lampproof.design.Law;
import lampproof.design.Topology;

/** Finds the set-point and the slow states at which a half cycle repeats itself and the string has its current. */
public final class SteadyState {

    private static final int MOST_PASSES = 60;
    private static final double TOLERANCE = 1e-6;
    private static final double BUS_TOLERANCE = 0.1;

    private final Driver driver;
    private final HalfCycle halfCycle;
    private final double forgetting;

    private SteadyState(Driver driver) {
        this.driver = driver;
        this.halfCycle = new HalfCycle(driver);
        double timeConstant = driver.string().resistance() * driver.output().capacitance();
        this.forgetting = -Math.expm1(-driver.line().halfPeriod() / timeConstant);
    }

    /**
     * The periodic steady state of a driver whose set-point gives the string its mean current.
     *
     * @throws IllegalStateException when the passes do not settle
     */
    public static Operation of(Driver driver) {
        return new SteadyState(driver).solve();
    }

    /**
     * The periodic steady state at a set-point; the string takes the current that then comes.
     *
     * @param setPoint on-time [s] or peak current [A]
     * @param start slow states to begin with
     * @throws IllegalStateException when the passes do not settle
     */
    public static Operation at(Driver driver, double setPoint, SlowState start) {
        return new SteadyState(driver).settle(setPoint, start);
    }

    private Operation settle(double setPoint, SlowState first) {
        SlowState start = first;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            SlowState end = halfCycle.run(start, setPoint, null);
            double drift = end.outputVoltage() - start.outputVoltage();
            if (settled(0, drift, end.busVoltage() - start.busVoltage(), start)) {
                return record(start, setPoint);
            }
            start = end.withOutputVoltage(start.outputVoltage() + drift / forgetting);
        }
        throw unsettled();
    }

    /**
     * Moves set-point and output voltage together, each by what a straight answer of the other would ask for: the
     * string's mean current follows the charge given, and the output voltage above the knee follows the current.
     */
    private Operation solve() {
        double target = driver.string().current();
        double setPoint = firstSetPoint();
        double exponent = driver.control().law() == Law.FIXED_DUTY ? 2 : 1;
        double lastSetPoint = 0;
        double lastGiven = 0;
        SlowState start = firstState();
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            SlowState end = halfCycle.run(start, setPoint, null);
            double drift = end.outputVoltage() - start.outputVoltage();
            double given = Math.max(halfCycle.meanStringCurrent() + stored(drift), 0.01 * target);
            double miss = Math.log(target / given);
            if (settled(miss, drift, end.busVoltage() - start.busVoltage(), start)) {
                return record(start, setPoint);
            }
            exponent = pass < 2 ? exponent : exponent(setPoint / lastSetPoint, given / lastGiven, exponent);
            lastSetPoint = setPoint;
            lastGiven = given;
            setPoint *= Math.exp(Math.max(-1, Math.min(1, miss / exponent)));
            start = end.withOutputVoltage(nextOutputVoltage(start.outputVoltage() + drift / forgetting, miss));
        }
        throw unsettled();
    }

    private IllegalStateException unsettled() {
        return new IllegalStateException("the half cycle does not settle for " + driver);
    }

    /** Mean current that the output capacitor kept over the half cycle [A]. */
    private double stored(double drift) {
        return driver.output().capacitance() * drift / driver.line().halfPeriod();
    }

    private double nextOutputVoltage(double settling, double miss) {
        double knee = driver.string().knee();
        return knee + (settling - knee) * Math.exp(Math.max(-1, Math.min(1, miss)));
    }

    /** Power of the set-point that the current follows, from the last two passes. */
    private static double exponent(double setPoints, double currents, double before) {
        if (Math.abs(Math.log(setPoints)) < 1e-6) {
            return before;
        }
        double found = Math.log(currents) / Math.log(setPoints);
        return found > 0.5 && found < 4 ? found : before;
    }

    private static boolean settled(double miss, double drift, double busDrift, SlowState start) {
        return Math.abs(miss) < TOLERANCE
                && Math.abs(drift) < TOLERANCE * start.outputVoltage()
                && Math.abs(busDrift) < BUS_TOLERANCE;
    }

    private Operation record(SlowState start, double setPoint) {
        List<AnglePoint> points = new ArrayList<>(HalfCycle.STEPS);
        halfCycle.run(start, setPoint, points::add);
        return new Operation(driver, setPoint, points, start);
    }

    private SlowState firstState() {
        double output = driver.string().voltage(driver.string().current());
        return new SlowState(output / 2, output, 0, driver.string().current(), 0);
    }

    /** On-time or peak current of a lossless driver at the crest, as a start. */
    private double firstSetPoint() {
        double output = driver.string().voltage(driver.string().current());
        double crest = driver.line().crest();
        boolean stepUp = driver.topology() == Topology.STEP_UP;
        double mean = stepUp
                ? 2 * output * driver.string().current() / crest
                : 1.6 * driver.string().current();
        double source = stepUp ? crest : crest - output;
        double inductance = driver.inductor().inductance();
        return switch (driver.control().law()) {
            case PEAK_CURRENT, FIXED_OFF_TIME -> 1.3 * mean;
            case BOUNDARY -> 2 * mean * inductance / source;
            case FIXED_DUTY -> {
                double swing = stepUp ? output : crest;
                double reset = (swing - source) / swing;
                yield Math.sqrt(2
                        * mean
                        * inductance
                        * reset
                        / (source * driver.control().frequency()));
            }
        };
    }
}
