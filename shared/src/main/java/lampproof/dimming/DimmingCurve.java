package lampproof.dimming;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.design.Dimming;
import lampproof.design.Dimming.Edge;

/**
 * A lamp while its dimmer is turned down and up again.
 *
 * <p>A lamp is lit while its mean string current is at least {@value #LIT} of that without a dimmer; darker than that it looks
 * off beside a dimmed one (common practice, no source).
 *
 * @param dimming dimmer and bleeder
 * @param fullCurrent mean string current without a dimmer [A]
 * @param down settings from full to off
 * @param up settings from off to full
 * @param lights where the lamp lights while it is turned up; empty when it never does
 * @param darkens where it goes dark while it is turned down; empty when it glows to the end
 * @param off the dimmer is off
 * @param offWithoutBleeder the same for a lamp without bleeder
 */
public record DimmingCurve(
        Dimming dimming,
        double fullCurrent,
        List<DimmingPoint> down,
        List<DimmingPoint> up,
        Optional<DimmingThreshold> lights,
        Optional<DimmingThreshold> darkens,
        OffState off,
        OffState offWithoutBleeder) {

    private static final double LIT = 1e-3;

    /** What an eye takes for no change, also the tolerance of means: two steps of it make a step back. */
    private static final double SAME = 0.01;

    /** Copies the points. */
    public DimmingCurve {
        down = List.copyOf(down);
        up = List.copyOf(up);
    }

    /** Mean string current over that without a dimmer [-]. */
    public double level(double current) {
        return current / fullCurrent;
    }

    /** Mean string current at a conduction angle [deg] while the dimmer is turned down, straight between two settings [A]. */
    public double currentAt(double degrees) {
        double place = down.size() - 1 - degrees / DimmingSweep.STEP_DEGREES;
        int before = (int) Math.max(0, Math.min(down.size() - 2, Math.floor(place)));
        double share = place - before;
        return (1 - share) * down.get(before).current()
                + share * down.get(before + 1).current();
    }

    /** Least level at which the lamp is still lit while it is turned down; absent when it is never lit [-]. */
    public Optional<Double> lowestLevel() {
        return Stream.concat(down.stream(), darkens.map(DimmingThreshold::before).stream())
                .filter(this::lit)
                .map(point -> level(point.current()))
                .min(Comparator.naturalOrder());
    }

    /** First setting at which the lamp is lit while it is turned up from off; absent when it never is. */
    public Optional<DimmingPoint> popOn() {
        return lights.map(DimmingThreshold::after);
    }

    /** First setting at which the lamp is no longer lit while it is turned down; absent when it glows to the end. */
    public Optional<DimmingPoint> dropOut() {
        return darkens.map(DimmingThreshold::after);
    }

    /** Turn from off in which nothing happens: up to the pop-on [rad]. */
    public double deadTravelBelow() {
        return popOn().map(DimmingPoint::conduction).orElse(Math.PI);
    }

    /** Turn to full in which the light stays within {@value #SAME} of what it is there [rad]. */
    public double deadTravelAbove() {
        double end = down.get(0).current();
        return down.stream()
                .takeWhile(point -> Math.abs(point.current() - end) <= SAME * fullCurrent)
                .mapToDouble(point -> Math.PI - point.conduction())
                .max()
                .orElse(0);
    }

    /** First setting at which the lamp is brighter than at the one before by more than {@value #SAME}, while it is turned down. */
    public Optional<DimmingPoint> stepBack() {
        return IntStream.range(1, down.size())
                .filter(k -> down.get(k).current() - down.get(k - 1).current() > SAME * fullCurrent)
                .mapToObj(down::get)
                .findFirst();
    }

    /** The setting at which the bleeder is hottest. */
    public DimmingPoint hottestBleeder() {
        return most(point -> point.stress().bleederLoss());
    }

    /** The setting with the greatest current into the lamp: the firing spike of a leading edge. */
    public DimmingPoint greatestSpike() {
        return most(point -> point.stress().peakLineCurrent());
    }

    /** The setting at which the current of a triac comes nearest to its holding current; absent for transistors. */
    public Optional<DimmingPoint> nearestToMisfire() {
        return watched().min(Comparator.comparingDouble(point -> point.stress().leastTriacCurrent()));
    }

    /** Settings at which the triac goes out before the watch ends, while the dimmer is turned down. */
    public List<DimmingPoint> misfires() {
        return watched().filter(this::goesOut).toList();
    }

    /** Whether the triac goes out at a setting before the watch ends. */
    public boolean goesOut(DimmingPoint point) {
        return isWatched(point) && point.stress().leastTriacCurrent() < dimming.holdingCurrent();
    }

    /** Settings at which half cycles take turns that differ by more than {@value #SAME} of full, while it is turned down. */
    public List<DimmingPoint> flickers() {
        return down.stream().filter(this::flickers).toList();
    }

    /** Whether half cycles that differ by more than {@value #SAME} of full take turns at a setting. */
    public boolean flickers(DimmingPoint point) {
        return point.swing() > SAME * fullCurrent;
    }

    /** Whether there is a triac that has to hold by itself at a setting. */
    public boolean isWatched(DimmingPoint point) {
        return dimming.edge() == Edge.LEADING && point.conduction() > 0;
    }

    /** What is left of the smallest current of the triac above its holding current [A]; negative where it goes out. */
    public double misfireMargin(DimmingPoint point) {
        return point.stress().leastTriacCurrent() - dimming.holdingCurrent();
    }

    /** Whether a mean string current [A] is light. */
    public boolean lit(double current) {
        return isLit(current, fullCurrent);
    }

    static boolean isLit(double current, double fullCurrent) {
        return current >= LIT * fullCurrent;
    }

    private boolean lit(DimmingPoint point) {
        return lit(point.current());
    }

    private Stream<DimmingPoint> watched() {
        return down.stream().filter(this::isWatched);
    }

    private DimmingPoint most(ToDoubleFunction<DimmingPoint> what) {
        return Stream.concat(down.stream(), up.stream())
                .max(Comparator.comparingDouble(what))
                .orElseThrow();
    }
}
