package lampproof.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/** The measurements of a pass, fed side by side while the next points are read. */
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

    /** Begins to feed the measurements with points, part by part; they must stay as they are until this has settled. */
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
     * Waits until every measurement has taken what it was fed with; several may ask for their results at once.
     *
     * <p>The last task first: a thread that waits takes on what it asks for only if nothing was submitted later.
     */
    synchronized void await() {
        while (!running.isEmpty()) {
            running.remove(running.size() - 1).join();
        }
    }
}
