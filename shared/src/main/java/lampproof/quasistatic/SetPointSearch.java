package lampproof.quasistatic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lampproof.design.Driver;
import lampproof.design.Law;
import lampproof.design.Topology;

/** Finds the set-point and the slow states at which a half cycle repeats itself and the string has its current. */
final class SetPointSearch {

    private static final int MOST_PASSES = 60;
    private static final double TOLERANCE = 1e-6;
    private static final int COARSE_PASSES = 8;
    private static final double COARSE_TOLERANCE = 1.5e-2;
    private static final double GREATEST_EXPONENT = 4;

    /**
     * Where a small change moves a cycle from one regime to another, the passes end in an oscillation about the solution; the
     * best pass is then accepted, if it is within a quarter of the tolerance of a mean.
     */
    private static final double LOOSE_TOLERANCE = 5e-3;

    private final Driver driver;
    private final HalfCycle halfCycle;
    private final double settledShare;

    /** A pass, its points, and its residual: how far it is from repeating itself [-]. */
    private record Pass(double setPoint, SlowState start, List<AnglePoint> points, double residual) {

        static Pass none(double setPoint, SlowState start) {
            return new Pass(setPoint, start, List.of(), Double.POSITIVE_INFINITY);
        }

        boolean isUnsettled() {
            return !(residual < LOOSE_TOLERANCE);
        }
    }

    private SetPointSearch(Driver driver) {
        this.driver = driver;
        this.halfCycle = new HalfCycle(driver);
        double timeConstant = driver.string().resistance() * driver.output().capacitance();
        this.settledShare = -Math.expm1(-driver.line().halfPeriod() / timeConstant);
    }

    /**
     * The periodic steady state of a driver whose set-point gives the string its mean current, in any mode; empty where no
     * set-point does. A fixed-duty driver that leaves discontinuous mode has one all the same: its caller names that fault.
     */
    static Optional<Operation> of(Driver driver) {
        SetPointSearch search = new SetPointSearch(driver);
        Pass best = search.solve();
        Operation operation = search.record(best);
        return best.isUnsettled() && !operation.leavesDiscontinuousMode() ? Optional.empty() : Optional.of(operation);
    }

    /** Whether some set-point gives the string its current. */
    static boolean exists(Driver driver) {
        return !new SetPointSearch(driver).solve().isUnsettled();
    }

    /** Mean string current that a set-point ends in, whether it then is steady or not [A]. */
    static double stringCurrent(Driver driver, double setPoint) {
        SetPointSearch search = new SetPointSearch(driver);
        SlowState start = search.firstState();
        double given = 0;
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            SlowState end = search.halfCycle.run(start, setPoint, null);
            double drift = end.outputVoltage() - start.outputVoltage();
            given = search.halfCycle.meanStringCurrent() + search.stored(drift);
            start = end.withOutputVoltage(start.outputVoltage() + drift / search.settledShare);
        }
        return given;
    }

    /**
     * The periodic steady state at a set-point; the string carries the current that results.
     *
     * @param setPoint on-time [s] or peak current [A]
     * @param start slow states to begin with
     * @throws IllegalStateException when the passes do not settle
     */
    static Operation at(Driver driver, double setPoint, SlowState start) {
        return new SetPointSearch(driver).settle(setPoint, start);
    }

    private Operation settle(double setPoint, SlowState first) {
        SlowState start = first;
        Pass best = Pass.none(setPoint, start);
        for (int pass = 0; pass < MOST_PASSES && best.residual() >= TOLERANCE; pass++) {
            List<AnglePoint> points = new ArrayList<>(HalfCycle.STEPS);
            SlowState end = halfCycle.run(start, setPoint, points::add);
            double residual = residual(0, start, end);
            best = residual < best.residual() ? new Pass(setPoint, start, points, residual) : best;
            double drift = end.outputVoltage() - start.outputVoltage();
            start = end.withOutputVoltage(start.outputVoltage() + drift / settledShare);
        }
        Operation operation = record(best);
        if (best.isUnsettled() && !operation.leavesDiscontinuousMode()) {
            throw new IllegalStateException(
                    "the half cycle does not settle within " + best.residual() + " for " + driver);
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
     * Moves set-point and output voltage together, each by what a straight response of the other requires: the
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
            double residual = Double.MAX_VALUE;
            for (int k = 0; k < most && residual >= tolerance; k++) {
                List<AnglePoint> points = new ArrayList<>(HalfCycle.STEPS);
                SlowState end = pass.run(start, setPoint, points::add);
                double drift = end.outputVoltage() - start.outputVoltage();
                double given = Math.max(pass.meanStringCurrent() + stored(drift), 0.01 * target);
                double miss = Math.log(target / given);
                residual = residual(miss, start, end);
                best = residual < best.residual() ? new Pass(setPoint, start, points, residual) : best;
                exponent = k == 0 ? exponent : exponent(setPoint / lastSetPoint, given / lastGiven, exponent);
                lastSetPoint = setPoint;
                lastGiven = given;
                setPoint *= Math.exp(Math.max(-1, Math.min(1, miss / exponent)));
                start = end.withOutputVoltage(nextOutputVoltage(start.outputVoltage() + drift / settledShare, miss));
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
    private double residual(double miss, SlowState start, SlowState end) {
        double drift = (end.outputVoltage() - start.outputVoltage()) / start.outputVoltage();
        double busEnergy = 0.5
                * driver.busCapacitance()
                * (end.busVoltage() * end.busVoltage() - start.busVoltage() * start.busVoltage());
        double current = driver.string().current();
        double energy =
                driver.string().voltage(current) * current * driver.line().halfPeriod();
        double residual = Math.max(Math.abs(miss), Math.max(Math.abs(drift), Math.abs(busEnergy) / energy));
        return residual < Double.MAX_VALUE ? residual : Double.MAX_VALUE;
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
