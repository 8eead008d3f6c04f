package lampproof.quasistatic;

import java.util.ArrayList;
import java.util.List;
import lampproof.design.Driver;
import lampproof.design.Topology;

/** Finds the set-point and the slow states at which a half cycle repeats itself and the string has its current. */
public final class SteadyState {

    private static final int MOST_PASSES = 60;
    private static final double TOLERANCE = 1e-7;

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

    private Operation solve() {
        double target = driver.string().current();
        double setPoint = firstSetPoint();
        double exponent = 1;
        double lastSetPoint = 0;
        double lastMean = 0;
        SlowState start = firstState();
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            SlowState end = halfCycle.run(start, setPoint, null);
            double drift = end.outputVoltage() - start.outputVoltage();
            double mean = halfCycle.meanStringCurrent() + stored(drift);
            double busDrift = end.busVoltage() - start.busVoltage();
            double miss = Math.log(target / Math.max(mean, 0.01 * target));
            if (settled(miss, drift, busDrift, start)) {
                return record(start, setPoint);
            }
            if (pass > 2 && Math.abs(Math.log(setPoint / lastSetPoint)) > 1e-9) {
                double found = Math.log(mean / lastMean) / Math.log(setPoint / lastSetPoint);
                exponent = found > 0.5 ? Math.min(4, found) : exponent;
            }
            lastSetPoint = setPoint;
            lastMean = mean;
            setPoint *= Math.exp(Math.max(-1, Math.min(1, miss / exponent)));
            start = new SlowState(
                    end.busVoltage(),
                    start.outputVoltage() + drift / forgetting + driver.string().resistance() * (target - mean),
                    end.inputCurrent(),
                    end.outputCurrent(),
                    end.inductorCurrent());
        }
        throw new IllegalStateException("the half cycle does not settle for " + driver);
    }

    /**
     * Mean current into the output capacitor [A]. With the string current it is what the converter gives, which answers to
     * the set-point at once, while the string waits for the capacitor.
     */
    private double stored(double drift) {
        return driver.output().capacitance() * drift / driver.line().halfPeriod();
    }

    private static boolean settled(double miss, double drift, double busDrift, SlowState start) {
        return Math.abs(miss) < TOLERANCE
                && Math.abs(drift) < TOLERANCE * start.outputVoltage()
                && Math.abs(busDrift) < 1e-5 * start.outputVoltage();
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

    /** On-time or peak current that is about right for a lossless driver whose current comes back to zero at the crest. */
    private double firstSetPoint() {
        double current = driver.string().current();
        double output = driver.string().voltage(current);
        double crest = driver.line().crest();
        boolean stepUp = driver.topology() == Topology.STEP_UP;
        double peak = stepUp ? 4 * output * current / crest : 3 * current;
        double source = stepUp ? crest : crest - output;
        return driver.control().law().setsCurrent()
                ? 0.6 * peak
                : peak * driver.inductor().inductance() / source;
    }
}
