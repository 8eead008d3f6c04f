package lampproof.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/** The measurements of a pass, which run in parallel while the next points are read. */
final class ParallelMeasurements {

    private final List<Measurement> measurements = new ArrayList<>();
    private final List<ForkJoinTask<?>> running = new ArrayList<>();

    void add(Measurement measurement) {
        measurement.completeBy(this::await);
        measurements.add(measurement);
    }

    boolean none() {
        return measurements.isEmpty();
    }

    /** Starts the measurements on points, part by part; the points must not change until {@link #await} returns. */
    void feed(Points... parts) {
        await();
        for (Measurement measurement : measurements) {
            running.add(ForkJoinPool.commonPool().submit(() -> {
                for (Points part : parts) {
                    measurement.take(part);
                }
            }));
        }
    }

    /**
     * Waits until every measurement has processed its points; several threads may wait at once.
     *
     * <p>The last task first: a waiting thread executes the task itself only if none was submitted later.
     */
    synchronized void await() {
        while (!running.isEmpty()) {
            running.remove(running.size() - 1).join();
        }
    }
}
