package lampproof.quasistatic.dimmed;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import lampproof.design.Driver;

/**
 * Runs half cycles behind a dimmer until they repeat.
 *
 * <p>At first each begins where the output tends to. If none repeats the one before it, they then run freely: in some
 * firings the converter meets another bus voltage each time, and two or more half cycles take turns as long as the line lasts. These
 * are taken together; so are the last ones of a lamp that never repeats, such as a dark one whose output still falls.
 */
final class DimmedSettling {

    /** So many half cycles may take turns. */
    static final int MOST_TURNS = 16;

    private static final int ACCELERATED_PASSES = 40;
    private static final int FREE_PASSES = 120;
    private static final double TOLERANCE = 1e-4;

    private final Driver driver;
    private final DimmedHalfCycle halfCycle;
    private final double setPoint;
    private final List<DimmedState> starts = new ArrayList<>();
    private final List<DimmedStress> stresses = new ArrayList<>();

    DimmedSettling(Driver driver, DimmedHalfCycle halfCycle, double setPoint) {
        this.driver = driver;
        this.halfCycle = halfCycle;
        this.setPoint = setPoint;
    }

    /**
     * What repeats.
     *
     * @param start states before the first of the half cycles that take turns
     * @param stress all of them together
     * @param swing greatest less least mean string current of one of them [A]
     */
    record Settled(DimmedState start, DimmedStress stress, double swing) {}

    Settled from(DimmedState first) {
        DimmedState start = first;
        for (int pass = 0; pass < ACCELERATED_PASSES; pass++) {
            DimmedState end = halfCycle.run(start, setPoint);
            if (residual(start, end) < TOLERANCE) {
                return new Settled(start, halfCycle.stress(), 0);
            }
            start = accelerated(start, end);
        }
        return settledFreely(start);
    }

    private Settled settledFreely(DimmedState first) {
        DimmedState start = first;
        for (int pass = 0; pass < FREE_PASSES; pass++) {
            starts.add(start);
            start = halfCycle.run(start, setPoint);
            stresses.add(halfCycle.stress());
            OptionalInt turns = repeated(start);
            if (turns.isPresent()) {
                return last(turns.getAsInt());
            }
        }
        return last(MOST_TURNS);
    }

    /** After how many half cycles a state repeats; empty when it is new. */
    private OptionalInt repeated(DimmedState end) {
        return IntStream.rangeClosed(1, Math.min(MOST_TURNS, starts.size()))
                .filter(turns -> residual(starts.get(starts.size() - turns), end) < TOLERANCE)
                .findFirst();
    }

    private Settled last(int turns) {
        List<DimmedStress> together = stresses.subList(stresses.size() - turns, stresses.size());
        DoubleSummaryStatistics light =
                together.stream().mapToDouble(DimmedStress::stringCurrent).summaryStatistics();
        return new Settled(
                starts.get(starts.size() - turns), DimmedStress.together(together), light.getMax() - light.getMin());
    }

    /** The end of a half cycle, with the output voltage where it tends to. */
    private DimmedState accelerated(DimmedState start, DimmedState end) {
        double before = start.slow().outputVoltage();
        double settling = before + (end.slow().outputVoltage() - before) / settledShare();
        boolean lit = Math.min(before, settling) > driver.string().knee();
        return lit ? end.withOutputVoltage(settling) : end;
    }

    private double settledShare() {
        double timeConstant = driver.string().resistance() * driver.output().capacitance();
        return -Math.expm1(-driver.line().halfPeriod() / timeConstant);
    }

    /** Change of bus energy over that of the string, or of the output voltage, whichever is larger [-]. */
    private double residual(DimmedState start, DimmedState end) {
        double rated = driver.string().voltage(driver.string().current());
        double energy = rated * driver.string().current() * driver.line().halfPeriod();
        double before = start.slow().busVoltage();
        double after = end.slow().busVoltage();
        double bus = 0.5 * driver.busCapacitance() * Math.abs(after * after - before * before) / energy;
        double output = Math.abs(end.slow().outputVoltage() - start.slow().outputVoltage()) / rated;
        double lamp = Math.abs(end.lampVoltage() - start.lampVoltage())
                / driver.line().crest();
        return Math.max(bus, Math.max(output, 0.1 * lamp));
    }
}
