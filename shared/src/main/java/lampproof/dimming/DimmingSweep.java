package lampproof.dimming;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import lampproof.design.Driver;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.quasistatic.DimmedOperation;
import lampproof.quasistatic.DimmedState;
import lampproof.quasistatic.Operation;

/** Turns the dimmer of a lamp down and up; each setting begins with the state that the one before has left. */
public final class DimmingSweep {

    /** From setting to setting [deg]. */
    public static final int STEP_DEGREES = 5;

    private static final List<Double> RISING = IntStream.rangeClosed(0, 180 / STEP_DEGREES)
            .mapToObj(step -> Math.toRadians(STEP_DEGREES * (double) step))
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
        if (!full.driver().fittings().dimming().present()) {
            throw UserFault.badInput(
                    Finding.of("the spec names no dimmer", "dimmer.edge", "give dimmer.edge as leading or trailing"));
        }
        return new DimmingSweep(full).curve();
    }

    private DimmingCurve curve() {
        List<Double> falling = new ArrayList<>(RISING);
        Collections.reverse(falling);
        CompletableFuture<List<DimmingPoint>> down = CompletableFuture.supplyAsync(() -> turned(lit(), falling));
        DimmedState dark = off(full.driver()).start();
        List<DimmingPoint> up = turned(dark, RISING);
        OffState bare = OffState.of(new DimmingPoint(0, off(withoutBleeder()).stress()));
        return new DimmingCurve(
                full.driver().fittings().dimming(),
                full.string().meanCurrent(),
                down.join(),
                up,
                OffState.of(up.get(0)),
                bare);
    }

    private DimmedState lit() {
        return at(full.driver(), Math.PI, DimmedState.of(full.start())).start();
    }

    /** Off for so long that the output capacitor holds no more than the string lets it. */
    private DimmedOperation off(Driver driver) {
        return at(
                driver,
                0,
                DimmedState.of(full.start()).withOutputVoltage(driver.string().knee()));
    }

    private Driver withoutBleeder() {
        return full.driver().behind(full.driver().fittings().dimming().withoutBleeder());
    }

    private List<DimmingPoint> turned(DimmedState first, List<Double> conductions) {
        List<DimmingPoint> points = new ArrayList<>();
        DimmedState start = first;
        for (double conduction : conductions) {
            DimmedOperation settled = at(full.driver(), conduction, start);
            points.add(new DimmingPoint(conduction, settled.stress()));
            start = settled.start();
        }
        return points;
    }

    private DimmedOperation at(Driver driver, double conduction, DimmedState start) {
        Driver turned = driver.behind(driver.fittings().dimming().at(conduction));
        return DimmedOperation.from(full, turned, start);
    }
}
