package lampproof.event;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import lampproof.design.Control;
import lampproof.design.Driver;
import lampproof.design.Law;
import lampproof.design.Surge;
import lampproof.quasistatic.AnglePoint;
import lampproof.quasistatic.Operation;

/** The events of a lamp, each computed when it is first needed. */
public final class LampEvents {

    private static final double CYCLES_BEFORE = 5.3;
    private static final double CYCLES_AFTER = 20;
    private static final double SURGE_TIME = 60e-6;
    private static final double MOST_PERIODS = 1.25;
    private static final double MOST_HALF_CYCLES = 10;
    private static final double SHOWN_HALF_CYCLES = 1.25;
    private static final double SHOWN_AFTER_LIGHT = 1.2;

    /** How much of a clock period has passed at the end: on an edge a simulator's last steps vanish [-]. */
    public static final double CLOCK_AT_END = 0.95;

    private final Operation operation;
    private final Map<String, EventResult> known = new ConcurrentHashMap<>();

    /** The events of a lamp in its steady state. */
    public LampEvents(Operation operation) {
        this.operation = operation;
    }

    /** The string opens at the crest of the line; shown until some cycles after the control cell has stopped. */
    public EventResult openString() {
        return once("open", () -> {
            LampTransient lamp = atCrest();
            lamp.through(instant(), StringFault.NONE);
            lamp.until(MOST_PERIODS * 2 * driver().line().halfPeriod(), StringFault.OPEN);
            lamp.through(end(lamp.time() + CYCLES_AFTER * period()), StringFault.OPEN);
            return lamp.result(instant());
        });
    }

    /** The string is shorted at the crest of the line; shown for an eighth of a line cycle. */
    public EventResult shortedString() {
        return once("shorted", () -> {
            LampTransient lamp = atCrest();
            lamp.through(instant(), StringFault.NONE);
            double eighth = driver().line().halfPeriod() / 4;
            lamp.through(end(instant() + eighth), StringFault.SHORTED);
            return lamp.result(instant());
        });
    }

    /** A surge strikes; shown until its second half is over. */
    public EventResult surge() {
        return once("surge", () -> {
            AnglePoint start = surgePoint();
            Surge surge = driver().exposure().surge();
            LampTransient lamp = new LampTransient(
                    operation, start, new SurgeSource(surge, driver().line(), start.lineCurrent(), instant()));
            lamp.through(end(instant() + SURGE_TIME), StringFault.NONE);
            return lamp.result(instant());
        });
    }

    /** The mains is switched on with no charge in the lamp; shown for a half cycle and a quarter, or until there is light. */
    public EventResult powerUp() {
        return once("power-up", () -> {
            double angle = driver().exposure().powerUpAngle();
            LampTransient lamp = new LampTransient(operation, dead(angle), new MainsSource(driver().line(), angle));
            double half = driver().line().halfPeriod();
            lamp.untilLight(MOST_HALF_CYCLES * half);
            lamp.through(end(Math.max(SHOWN_HALF_CYCLES * half, SHOWN_AFTER_LIGHT * lamp.time())), StringFault.NONE);
            return lamp.result(0);
        });
    }

    /** A line angle [rad] at which nothing is charged and nothing flows. */
    private static AnglePoint dead(double angle) {
        return new AnglePoint(angle, 0, 0, 0, 0, 0, 0, 0, 0, 0, null);
    }

    /** The point of the line at which the surge strikes. */
    public AnglePoint surgePoint() {
        double share = driver().exposure().surge().angle() / Math.PI;
        int last = operation.points().size() - 1;
        return operation.points().get((int) Math.min(last, Math.round(share * last)));
    }

    private EventResult once(String name, Supplier<EventResult> event) {
        return known.computeIfAbsent(name, any -> event.get());
    }

    /** Where a clock runs, the end lies between two of its strokes. */
    private double end(double least) {
        Control control = driver().control();
        boolean clocked = control.law() == Law.FIXED_DUTY || control.law() == Law.PEAK_CURRENT;
        return clocked ? (Math.ceil(least * control.frequency()) + CLOCK_AT_END) / control.frequency() : least;
    }

    private LampTransient atCrest() {
        return new LampTransient(operation, operation.crest(), new MainsSource(driver().line(), Math.PI / 2));
    }

    private Driver driver() {
        return operation.driver();
    }

    private double instant() {
        return CYCLES_BEFORE * period();
    }

    private double period() {
        return operation.crest().cycle().period();
    }
}
