package lampproof.quasistatic;

import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import lampproof.design.Control;
import lampproof.design.Driver;
import lampproof.design.Law;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.physics.PreferredSeries;
import lampproof.unit.PlainNumber;

/**
 * The range of string currents that a control law reaches, and the nearest change that brings the wanted current into it.
 *
 * <p>A law that waits for a current has a longest on-time, which limits how much the string can get, and a shortest one,
 * blanking and delay, below which it cannot go.
 */
final class ControlRange {

    private static final int DIGITS = 3;
    private static final double FAR = 1e6;
    private static final double STEP = 1.25;
    private static final int VALUES_TRIED = 24;
    private static final double LONGEST_SHARE = 0.95;

    private final Driver driver;
    private final Control control;
    private final double wanted;

    private ControlRange(Driver driver) {
        this.driver = driver;
        control = driver.control();
        wanted = driver.string().current();
    }

    /**
     * The periodic steady state of a driver, in any mode.
     *
     * @throws UserFault when no set-point gives the string its current, with the nearest change that would work
     */
    static Operation operation(Driver driver) {
        return SetPointSearch.of(driver).orElseThrow(() -> UserFault.badInput(new ControlRange(driver).finding()));
    }

    private Finding finding() {
        if (control.law().setsCurrent()) {
            double most = SetPointSearch.stringCurrent(driver, FAR * wanted);
            if (most < wanted) {
                return tooLittle(most);
            }
            double least = SetPointSearch.stringCurrent(driver, wanted / FAR);
            if (least > wanted) {
                return tooMuch(least);
            }
        }
        return unsettled();
    }

    private Finding tooLittle(double most) {
        String what = control.law().word() + " control cannot give the string its current";
        Optional<Double> longer = first(control.maxOnTime(), value -> value * STEP, longest(), this::withMaxOnTime);
        String found = milliamperes(most) + " of " + milliamperes(wanted) + " with a switch that is closed for at most "
                + microseconds(control.maxOnTime() + control.delay());
        return longer.map(value -> new Finding(
                        what,
                        "switching.max_on_time",
                        found,
                        "at least " + microseconds(value),
                        "raise switching.max_on_time, or lower inductor.inductance"))
                .orElseGet(
                        () -> new Finding(what, "inductor.inductance", found, smaller(), "lower inductor.inductance"));
    }

    private Finding tooMuch(double least) {
        String what = control.law().word() + " control cannot keep the string down to its current";
        String found = milliamperes(least) + " for " + milliamperes(wanted)
                + " with a switch that is closed for at least " + microseconds(control.blanking() + control.delay());
        return first(control.blanking(), value -> value / STEP, 0, this::withBlanking)
                .map(value -> new Finding(
                        what,
                        "switching.blanking",
                        found,
                        "at most " + microseconds(value),
                        "lower switching.blanking, or raise inductor.inductance"))
                .orElseGet(() -> slower(what, found));
    }

    /** Less often, where the off-time can be chosen; or else with an inductor that takes longer to fill. */
    private Finding slower(String what, String found) {
        Optional<Double> longer = control.law() == Law.FIXED_OFF_TIME
                ? first(control.offTime(), value -> 2 * value, Double.MAX_VALUE, this::withOffTime)
                : Optional.empty();
        return longer.map(value -> new Finding(
                        what,
                        "switching.off_time",
                        found,
                        "at least " + microseconds(value),
                        "raise switching.off_time"))
                .orElseGet(
                        () -> new Finding(what, "inductor.inductance", found, larger(), "raise inductor.inductance"));
    }

    private Finding unsettled() {
        return new Finding(
                "the string current does not come to rest under "
                        + control.law().word() + " control",
                "inductor.inductance",
                millihenries(inductance()),
                smaller(),
                "lower inductor.inductance, or take another driver.control");
    }

    private String smaller() {
        return first(inductance(), value -> PreferredSeries.E12.down(0.99 * value), 0, this::withInductance)
                .map(value -> "at most " + millihenries(value))
                .orElse("");
    }

    private String larger() {
        return first(
                        inductance(),
                        value -> PreferredSeries.E12.up(1.01 * value),
                        Double.MAX_VALUE,
                        this::withInductance)
                .map(value -> "at least " + millihenries(value))
                .orElse("");
    }

    private double inductance() {
        return driver.inductor().inductance();
    }

    /** A clocked switch must open before the next stroke of the clock. */
    private double longest() {
        return control.law() == Law.PEAK_CURRENT
                ? LONGEST_SHARE / control.frequency() - control.delay()
                : Double.MAX_VALUE;
    }

    /** The value nearest to the present one, in steps and short of an end, with which the driver has a steady state. */
    private static Optional<Double> first(
            double present, DoubleUnaryOperator step, double end, DoubleFunction<Driver> changed) {
        return DoubleStream.iterate(step.applyAsDouble(present), step)
                .limit(VALUES_TRIED)
                .filter(value -> (value - end) * (present - end) > 0)
                .filter(value -> SetPointSearch.exists(changed.apply(value)))
                .boxed()
                .findFirst();
    }

    private Driver withInductance(double value) {
        return ChangedDriver.of(driver, Map.of(Condition.INDUCTANCE, value), control);
    }

    private Driver withMaxOnTime(double value) {
        return ChangedDriver.of(driver, Map.of(), control.limited(value, control.blanking()));
    }

    private Driver withBlanking(double value) {
        return ChangedDriver.of(driver, Map.of(), control.limited(control.maxOnTime(), value));
    }

    private Driver withOffTime(double value) {
        return ChangedDriver.of(driver, Map.of(), control.resting(value));
    }

    private static String milliamperes(double current) {
        return PlainNumber.significant(1e3 * current, DIGITS) + " mA";
    }

    private static String microseconds(double time) {
        return PlainNumber.significant(1e6 * time, DIGITS) + " us";
    }

    private static String millihenries(double inductance) {
        return PlainNumber.significant(1e3 * inductance, DIGITS) + " mH";
    }
}
