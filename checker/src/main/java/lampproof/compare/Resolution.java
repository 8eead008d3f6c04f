package lampproof.compare;

import static lampproof.prediction.Probe.BRIDGE_CURRENT;
import static lampproof.prediction.Probe.DIODE_CURRENT;
import static lampproof.prediction.Probe.INDUCTOR_CURRENT;
import static lampproof.prediction.Probe.LINE_CURRENT;
import static lampproof.prediction.Probe.LINE_VOLTAGE;
import static lampproof.prediction.Probe.SWITCH_CURRENT;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import lampproof.measure.MeanProduct;
import lampproof.measure.Measured;
import lampproof.measure.Measurement;
import lampproof.measure.OnTime;
import lampproof.measure.PointAlternation;
import lampproof.measure.PointCount;
import lampproof.measure.RootMeanSquare;
import lampproof.measure.SwitchingWindow;
import lampproof.prediction.Probe;
import lampproof.unit.Engineering;

/**
 * Whether the points of a record follow the waveforms.
 *
 * <p>The error of a mean over straight lines between points falls with the square of their distance. So when every second point is omitted, a figure moves by three times the error that it had before.
 */
final class Resolution {

    private static final String NAME = "resolved";

    private static final double STEPS_PER_CYCLE = 20;
    private static final double STEPS_PER_ON_TIME = 10;

    /** Edges alone may have enough steps; a step longer than this ends an on-time too late [-]. */
    private static final double LONGEST_OF_ON_TIME = 0.25;

    /** A step over more of a switching cycle has missed an edge, or rows are missing [-]. */
    private static final double LONGEST_OF_CYCLE = 0.25;

    private static final double STEPS_OF_AN_EVENT = 1000;

    /** An error of 0.7 %, a third of what means and rms values are compared with [-]. */
    private static final double FIGURE_BAND = 0.02;

    /** Between the two integration rules: on the step-up example Gear's rule has none, the trapezoidal rule 28 in 100 [-]. */
    private static final double ALTERNATION = 0.01;

    private final ProbeMeasurements measurements;
    private final List<HalvedFigure> halved = new ArrayList<>();
    private final PointCount points;
    private final SwitchingWindow cycles;
    private final PendingValue onTime;
    private final PendingValue alternation;

    /** A figure from every point, and from every second one. */
    private record HalvedFigure(String figure, PendingValue all, PendingValue half) {

        /** Change relative to the figure from every point [-]; not a number when one is absent. */
        double change() {
            Measured change = all.result().with(half.result(), (a, h) -> a == 0 ? h : (h - a) / a);
            return change.present() ? Math.abs(change.value()) : Double.NaN;
        }

        boolean moves() {
            return !(change() <= FIGURE_BAND);
        }

        String text() {
            return figure + " moves by " + TrustCheck.percent(change()) + " (limit " + TrustCheck.percent(FIGURE_BAND)
                    + ")";
        }
    }

    Resolution(ProbeMeasurements measurements) {
        this.measurements = measurements;
        points = measurements.pass().add(new PointCount(measurements.window(), measurements.gate()));
        cycles = measurements.pass().add(new SwitchingWindow(measurements.window(), measurements.gate()));
        onTime = measurements.add(new OnTime(measurements.window(), measurements.gate()));
        alternation =
                measurements.add(new PointAlternation(measurements.window(), measurements.channel(SWITCH_CURRENT)));
        addHalved(
                "line.power.mean",
                () -> new MeanProduct(
                        measurements.window(), measurements.channel(LINE_VOLTAGE), measurements.channel(LINE_CURRENT)));
        for (Probe current : List.of(BRIDGE_CURRENT, INDUCTOR_CURRENT, SWITCH_CURRENT, DIODE_CURRENT)) {
            addHalved(
                    current.dotted() + ".rms",
                    () -> new RootMeanSquare(measurements.window(), measurements.channel(current)));
        }
    }

    /** The check, once the pass is over. */
    TrustCheck check() {
        TrustCheck steps = checkOfSteps();
        if (!steps.passed()) {
            return steps;
        }
        return alternation.result().value() > ALTERNATION ? rings() : followed(steps.text());
    }

    /** After a fault the switch may stay open, so all steps count if there is no whole cycle. */
    TrustCheck checkOfEvent() {
        if (perCycle().present() && onTime.result().present()) {
            return checkOfSteps();
        }
        double steps = points.result().present() ? points.result().value() : 0;
        String text = Math.round(steps) + " steps (at least " + Math.round(STEPS_OF_AN_EVENT) + ")";
        return TrustCheck.of(NAME, steps >= STEPS_OF_AN_EVENT, text);
    }

    private Measured perCycle() {
        return points.result().with(cycles.result(), (all, count) -> all / count);
    }

    private TrustCheck checkOfSteps() {
        Measured perCycle = perCycle();
        Measured perPulse = points.whileOn().with(cycles.result(), (on, count) -> on / count);
        if (!perCycle.present() || !onTime.result().present()) {
            String reason = perCycle.present() ? onTime.result().note() : perCycle.note();
            return TrustCheck.failed(NAME, "no switching seen: " + reason);
        }
        String steps = steps(perCycle.value(), perPulse.value());
        if (perCycle.value() < STEPS_PER_CYCLE || perPulse.value() < STEPS_PER_ON_TIME) {
            return TrustCheck.failed(NAME, "too coarse: " + steps);
        }
        double longest = points.longestOn().value();
        if (longest > LONGEST_OF_ON_TIME * onTime.result().value()) {
            return TrustCheck.failed(NAME, "too coarse: " + longest(longest));
        }
        double cycle = measurements.window().length() / cycles.result().value();
        return points.longest().value() > LONGEST_OF_CYCLE * cycle
                ? TrustCheck.failed(NAME, gap(points.longest().value(), cycle))
                : TrustCheck.passed(NAME, steps);
    }

    private void addHalved(String figure, Supplier<Measurement> measurement) {
        PendingValue all = measurements.add(measurement.get());
        PendingValue half = measurements.pass().addSparse(measurement.get())::result;
        halved.add(new HalvedFigure(figure, all, half));
    }

    private TrustCheck rings() {
        return TrustCheck.failed(
                NAME,
                "numerical ringing: switch.current alternates from point to point in "
                        + TrustCheck.percent(alternation.result().value()) + " of the record (limit "
                        + TrustCheck.percent(ALTERNATION)
                        + "): integrate with method=gear");
    }

    private TrustCheck followed(String steps) {
        List<String> moving = halved.stream()
                .filter(HalvedFigure::moves)
                .map(HalvedFigure::text)
                .toList();
        return moving.isEmpty()
                ? TrustCheck.passed(NAME, steps + "; with every second point omitted " + widest() + " at most")
                : TrustCheck.failed(NAME, "too coarse: with every second point omitted " + String.join(", ", moving));
    }

    /** The figure that moves most. */
    private String widest() {
        return halved.stream()
                .max((a, b) -> Double.compare(a.change(), b.change()))
                .map(HalvedFigure::text)
                .orElseThrow();
    }

    private static String gap(double step, double cycle) {
        return "too coarse: a step of " + Engineering.rounded(step, "s") + ", a switching cycle lasts "
                + Engineering.rounded(cycle, "s") + " (at most a quarter): are rows missing?";
    }

    private String longest(double step) {
        return "a step of " + Engineering.rounded(step, "s") + " in the on-time of "
                + Engineering.rounded(onTime.result().value(), "s") + " (at most a quarter)";
    }

    private String steps(double perCycle, double perPulse) {
        return Math.round(perCycle) + " steps in a switching cycle (at least " + Math.round(STEPS_PER_CYCLE) + "), "
                + Math.round(perPulse) + " of them in the on-time of "
                + Engineering.rounded(onTime.result().value(), "s") + " (at least " + Math.round(STEPS_PER_ON_TIME)
                + ")";
    }
}
