package lampproof.measure;

/** Omits every second point of a record. The first and the last point remain, and both sides of a vertical edge. */
final class Decimator {

    private final ParallelMeasurements measurements;
    private Points held;
    private Points taken;
    private boolean holding;

    Decimator(ParallelMeasurements measurements) {
        this.measurements = measurements;
    }

    /** Adds further points. */
    void take(Points points) {
        if (taken == null) {
            taken = new Points(points.channels(), points.times().length + 1, points.interpolation());
            held = new Points(points.channels(), 1, points.interpolation());
        }
        measurements.await();
        taken.keepLast();
        for (int point = 0; point < points.count(); point++) {
            next(points, point);
        }
        measurements.feed(taken);
    }

    /** Adds the last point too. */
    void end() {
        if (holding) {
            measurements.await();
            taken.keepLast();
            taken.add(held, 0);
            measurements.feed(taken);
        }
    }

    /** Keeps a point and the one before it, or omits the latter. */
    private void next(Points points, int point) {
        double time = points.times()[point];
        if (holding) {
            if (held.times()[0] == lastTaken() || held.times()[0] == time) {
                taken.add(held, 0);
            }
            holding = false;
            taken.add(points, point);
        } else if (taken.count() == 0) {
            taken.add(points, point);
        } else {
            held.clear();
            held.add(points, point);
            holding = true;
        }
    }

    private double lastTaken() {
        return taken.times()[taken.count() - 1];
    }
}
