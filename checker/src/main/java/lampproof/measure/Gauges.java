package lampproof.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The measurements of a pass, each fed with the pieces between successive points that lie in its window. */
final class Gauges {

    /** Points that wait until each measurement takes them all, measurements side by side. */
    private static final int POINTS = 2048;

    private static final int WORTH_SHARING = 4;

    private final Between between;
    private final List<Measurement> measurements = new ArrayList<>();
    private Gauge[] gauges = {};
    private Piece pieces;
    private int waiting;

    Gauges(Between between) {
        this.between = between;
    }

    void add(Measurement measurement) {
        measurement.waitFor(this::feed);
        measurements.add(measurement);
    }

    boolean none() {
        return measurements.isEmpty();
    }

    /** Takes the next point of every channel. */
    void point(double time, double[] levels) {
        if (pieces == null) {
            begin(levels.length);
        }
        pieces.set(waiting++, time, levels);
        if (waiting == POINTS) {
            feed();
        }
    }

    /** Feeds the measurements with the points that wait. */
    void feed() {
        if (waiting > 1) {
            int count = waiting - 1;
            Stream<Gauge> all = Arrays.stream(gauges);
            boolean shared = waiting == POINTS && gauges.length >= WORTH_SHARING;
            (shared ? all.parallel() : all).forEach(gauge -> gauge.take(count));
            pieces.bringForward(waiting - 1);
            waiting = 1;
        }
    }

    private void begin(int channels) {
        pieces = new Piece(channels, POINTS, between);
        gauges = measurements.stream()
                .map(measurement -> new Gauge(measurement, pieces.view(), new Piece(channels, 2, between)))
                .toArray(Gauge[]::new);
    }

    /** One measurement, fed with the part of each piece that lies in its window. */
    private static final class Gauge {
        private final Measurement measurement;
        private final Window window;
        private final Piece pieces;
        private final Piece part;

        /**
         * Joins a measurement to the points that wait.
         *
         * @param pieces a view of them that nobody else moves
         * @param part room for a piece that is cut
         */
        Gauge(Measurement measurement, Piece pieces, Piece part) {
            this.measurement = measurement;
            window = measurement.window();
            this.pieces = pieces;
            this.part = part;
        }

        void take(int count) {
            double start = pieces.time(0);
            double end = pieces.time(count);
            if (end < window.start() || start > window.end()) {
                return;
            }
            boolean within = start >= window.start() && end <= window.end();
            for (int i = 0; i < count; i++) {
                pieces.move(i);
                if (within) {
                    measurement.take(pieces);
                } else {
                    takeInside();
                }
            }
        }

        /** Takes the part of a piece that lies in the window. */
        private void takeInside() {
            if (pieces.end() < window.start() || pieces.start() > window.end() || touches()) {
                return;
            }
            if (pieces.start() < window.start() || pieces.end() > window.end()) {
                part.cut(pieces, window.start(), window.end());
                measurement.take(part);
            } else {
                measurement.take(pieces);
            }
        }

        /** Whether a piece with a width only touches the window. */
        private boolean touches() {
            return pieces.width() > 0 && (pieces.end() == window.start() || pieces.start() == window.end());
        }
    }
}
