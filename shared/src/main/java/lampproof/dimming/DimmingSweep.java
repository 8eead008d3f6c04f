package lampproof.dimming;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import lampproof.design.Driver;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.quasistatic.Operation;
import lampproof.quasistatic.dimmed.DimmedOperation;
import lampproof.quasistatic.dimmed.DimmedState;

/** Turns the dimmer of a lamp down and up; each setting begins with the state that the one before has left. */
public final class DimmingSweep {

    /** How closely it is found where the lamp lights or goes dark [rad]. */
    private static final double RESOLUTION = Math.toRadians(0.25);

    private static final List<Double> RISING = IntStream.rangeClosed(0, 180 / DimmingCurve.STEP_DEGREES)
            .mapToObj(step -> Math.toRadians(DimmingCurve.STEP_DEGREES * (double) step))
            .toList();

    private final Operation full;

    private DimmingSweep(Operation full) {
        this.full = full;
    }

    /**
     * The curve of a driver behind the dimmer of its spec.
     *
     * @param full its steady state without a dimmer
     * @throws UserFault when it has no dimmer
     */
    public static DimmingCurve of(Operation full) {
        if (!full.driver().dimming().present()) {
            throw UserFault.badInput(
                    Finding.of("the spec names no dimmer", "dimmer.edge", "give dimmer.edge as leading or trailing"));
        }
        return new DimmingSweep(full).curve();
    }

    private DimmingCurve curve() {
        List<Double> falling = new ArrayList<>(RISING);
        Collections.reverse(falling);
        CompletableFuture<Turned> turningDown =
                CompletableFuture.supplyAsync(() -> turned(DimmedState.of(full.start()), falling, false));
        DimmedOperation dark = off(full.driver());
        Turned up = turned(dark.start(), RISING, true);
        Turned down = turningDown.join();
        return new DimmingCurve(
                full.driver().dimming(),
                full.string().meanCurrent(),
                down.points(),
                up.points(),
                up.turn(),
                down.turn(),
                OffState.of(point(dark)),
                OffState.of(point(off(withoutBleeder()))));
    }

    /** Off for so long that the output capacitor holds no more than the string lets it. */
    private DimmedOperation off(Driver driver) {
        DimmedState start =
                DimmedState.of(full.start()).withOutputVoltage(driver.string().knee());
        return DimmedOperation.from(full, turned(driver, 0), start);
    }

    private Driver withoutBleeder() {
        return full.driver().behind(full.driver().dimming().withoutBleeder());
    }

    /** Settings in the order of turning, and where the lamp lights or goes dark. */
    private record Turned(List<DimmingPoint> points, Optional<DimmingThreshold> turn) {}

    private Turned turned(DimmedState first, List<Double> conductions, boolean lights) {
        List<DimmedOperation> settings = new ArrayList<>();
        DimmedState start = first;
        for (double conduction : conductions) {
            DimmedOperation setting = at(conduction, start);
            settings.add(setting);
            start = setting.start();
        }
        Optional<DimmingThreshold> turn = IntStream.range(0, settings.size())
                .filter(k -> lit(settings.get(k)) == lights)
                .mapToObj(k -> turn(settings.get(Math.max(0, k - 1)), settings.get(k)))
                .findFirst();
        return new Turned(settings.stream().map(DimmingSweep::point).toList(), turn);
    }

    /** Halves what lies between a dark and a lit setting; each begins with what the nearest one before has left. */
    private DimmingThreshold turn(DimmedOperation before, DimmedOperation after) {
        DimmedOperation low = before;
        DimmedOperation high = after;
        while (Math.abs(conduction(high) - conduction(low)) > RESOLUTION) {
            DimmedOperation middle = at(0.5 * (conduction(low) + conduction(high)), low.start());
            boolean turned = lit(middle) == lit(after);
            low = turned ? low : middle;
            high = turned ? middle : high;
        }
        return new DimmingThreshold(point(low), point(high));
    }

    private boolean lit(DimmedOperation setting) {
        return DimmingCurve.isLit(point(setting).current(), full.string().meanCurrent());
    }

    private static DimmingPoint point(DimmedOperation setting) {
        return new DimmingPoint(conduction(setting), setting.stress(), setting.swing());
    }

    private static double conduction(DimmedOperation setting) {
        return setting.driver().dimming().conduction();
    }

    private DimmedOperation at(double conduction, DimmedState start) {
        return DimmedOperation.from(full, turned(full.driver(), conduction), start);
    }

    private static Driver turned(Driver driver, double conduction) {
        return driver.behind(driver.dimming().at(conduction));
    }
}
