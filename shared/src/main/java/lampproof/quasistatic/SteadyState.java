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
    private static final int COARSE_PASSES = 8;
    private static final double COARSE_TOLERANCE = 1.5e-2;
    private static final double GREATEST_EXPONENT = 4;

    /**
     * Where a small change moves a cycle from one regime to another, the passes end in a dance about the answer; the best of
     * them is then taken, if it is within a quarter of the tolerance of a mean.
     */
    private static final double LOOSE_TOLERANCE = 5e-3;

    private final Driver driver;
    private final HalfCycle halfCycle;
    private final double forgetting;

    /** A pass, what it showed, and how far it was from repeating itself [-]. */
    private record Pass(double setPoint, SlowState start, List<AnglePoint> points, double unrest) {

        static Pass none(double setPoint, SlowState start) {
            return new Pass(setPoint, start, List.of(), Double.POSITIVE_INFINITY);
        }

        boolean isRestless() {
            return !(unrest < LOOSE_TOLERANCE);
        }
    }

    private SteadyState(Driver driver) {
        this.driver = driver;
        this.halfCycle = new HalfCycle(driver);
        double timeConstant = driver.string().resistance() * driver.output().capacitance();
        this.forgetting = -Math.expm1(-driver.line().halfPeriod() / timeConstant);
    }

    /**
     * The periodic steady state of a driver whose set-point gives the string its mean current.
     *
     * @throws lampproof.fault.UserFault when fixed duty leaves discontinuous mode, or no set-point gives that current
     */
    public static Operation of(Driver driver) {
        Operation operation = any(driver);
        DiscontinuousMode.require(operation);
        return operation;
    }

    /** The same, whatever its mode. */
    static Operation any(Driver driver) {
        SteadyState state = new SteadyState(driver);
        Pass best = state.solve();
        Operation operation = state.record(best);
        if (best.isRestless() && !DiscontinuousMode.isLeft(operation)) {
            throw ControlRange.fault(driver);
        }
        return operation;
    }

    /** Whether some set-point gives the string its current. */
    static boolean exists(Driver driver) {
        return !new SteadyState(driver).solve().isRestless();
    }

    /** Mean string current that a set-point ends in, whether it then is steady or not [A]. */
    static double stringCurrent(Driver driver, double setPoint) {
        SteadyState state = new SteadyState(driver);
        SlowState start = state.firstState();
        double given = 0;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            SlowState end = state.halfCycle.run(start, setPoint, null);
            double drift = end.outputVoltage() - start.outputVoltage();
            given = state.halfCycle.meanStringCurrent() + state.stored(drift);
            start = end.withOutputVoltage(start.outputVoltage() + drift / state.forgetting);
        }
        return given;
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
        Pass best = Pass.none(setPoint, start);
        for (int pass = 0; pass < MOST_PASSES && best.unrest() >= TOLERANCE; pass++) {
            List<AnglePoint> points = new ArrayList<>(HalfCycle.STEPS);
            SlowState end = halfCycle.run(start, setPoint, points::add);
            double unrest = unrest(0, start, end);
            best = unrest < best.unrest() ? new Pass(setPoint, start, points, unrest) : best;
            double drift = end.outputVoltage() - start.outputVoltage();
            start = end.withOutputVoltage(start.outputVoltage() + drift / forgetting);
        }
        Operation operation = record(best);
        if (best.isRestless() && !DiscontinuousMode.isLeft(operation)) {
            throw new IllegalStateException(
                    "the half cycle does not settle within " + best.unrest() + " for " + driver);
        }
        return operation;
    }

    /** A search in few steps comes so near that a search in all of them needs half as many passes. */
    private Pass solve() {
        Search search = new Search();
        search.run(HalfCycle.coarse(driver), COARSE_PASSES, COARSE_TOLERANCE);
        return search.run(halfCycle, MOST_PASSES, TOLERANCE);
    }

    /**
     * Moves set-point and output voltage together, each by what a straight answer of the other would ask for: the
     * string's mean current follows the charge given, and the output voltage above the knee follows the current.
     */
    private final class Search {

        private final double target = driver.string().current();
        private double setPoint = firstSetPoint();
        private double exponent = driver.control().law() == Law.FIXED_DUTY ? 2 : 1;
        private SlowState start = firstState();

        /** Runs until what has not settled is within a tolerance [-]; the best of the passes. */
        Pass run(HalfCycle pass, int most, double tolerance) {
            Pass best = Pass.none(setPoint, start);
            double lastSetPoint = 0;
            double lastGiven = 0;
            double unrest = Double.MAX_VALUE;
            for (int k = 0; k < most && unrest >= tolerance; k++) {
                List<AnglePoint> points = new ArrayList<>(HalfCycle.STEPS);
                SlowState end = pass.run(start, setPoint, points::add);
                double drift = end.outputVoltage() - start.outputVoltage();
                double given = Math.max(pass.meanStringCurrent() + stored(drift), 0.01 * target);
                double miss = Math.log(target / given);
                unrest = unrest(miss, start, end);
                best = unrest < best.unrest() ? new Pass(setPoint, start, points, unrest) : best;
                exponent = k == 0 ? exponent : exponent(setPoint / lastSetPoint, given / lastGiven, exponent);
                lastSetPoint = setPoint;
                lastGiven = given;
                setPoint *= Math.exp(Math.max(-1, Math.min(1, miss / exponent)));
                start = end.withOutputVoltage(nextOutputVoltage(start.outputVoltage() + drift / forgetting, miss));
            }
            return best;
        }
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
        return found > 0.5 ? Math.min(GREATEST_EXPONENT, found) : before;
    }

    /** The largest of what has not settled: string current, output voltage, and energy of the bus over that of the string. */
    private double unrest(double miss, SlowState start, SlowState end) {
        double drift = (end.outputVoltage() - start.outputVoltage()) / start.outputVoltage();
        double busEnergy = 0.5
                * driver.busCapacitance()
                * (end.busVoltage() * end.busVoltage() - start.busVoltage() * start.busVoltage());
        double current = driver.string().current();
        double energy =
                driver.string().voltage(current) * current * driver.line().halfPeriod();
        double unrest = Math.max(Math.abs(miss), Math.max(Math.abs(drift), Math.abs(busEnergy) / energy));
        return unrest < Double.MAX_VALUE ? unrest : Double.MAX_VALUE;
    }

    private Operation record(Pass best) {
        List<AnglePoint> points = best.points();
        AnglePoint crest = CrestSteadyState.of(driver, best.setPoint(), points.get(points.size() / 2));
        return new Operation(driver, best.setPoint(), points, crest, best.start());
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
