package lampproof.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The measurements of a pass, each fed with the pieces between successive points that lie in its window. */
final class Gauges {

    private final Between between;
    private final Map<Window, List<Measurement>> measurements = new LinkedHashMap<>();
    private Gauge[] gauges = {};
    private Piece piece;

    Gauges(Between between) {
        this.between = between;
    }

    void add(Measurement measurement) {
        measurements
                .computeIfAbsent(measurement.window(), w -> new ArrayList<>())
                .add(measurement);
    }

    boolean none() {
        return measurements.isEmpty();
    }

    /** Takes the next point of every channel. */
    void point(double time, double[] levels) {
        if (piece == null) {
            begin(levels.length);
            piece.begin(time, levels);
            return;
        }
        piece.advance(time, levels);
        for (Gauge gauge : gauges) {
            gauge.take(piece);
        }
    }

    private void begin(int channels) {
        piece = new Piece(channels, between);
        gauges = measurements.entrySet().stream()
                .map(e -> new Gauge(e.getKey(), e.getValue(), new Piece(channels, between)))
                .toArray(Gauge[]::new);
    }

    /** The measurements of one window, fed with the part of each piece that lies in it. */
    private static final class Gauge {
        private final Window window;
        private final Measurement[] measurements;
        private final Piece part;

        Gauge(Window window, List<Measurement> measurements, Piece part) {
            this.window = window;
            this.measurements = measurements.toArray(Measurement[]::new);
            this.part = part;
        }

        void take(Piece piece) {
            if (piece.end() < window.start() || piece.start() > window.end() || touches(piece)) {
                return;
            }
            Piece inside = piece;
            if (piece.start() < window.start() || piece.end() > window.end()) {
                part.cut(piece, window.start(), window.end());
                inside = part;
            }
            for (Measurement measurement : measurements) {
                measurement.take(inside);
            }
        }

        /** Whether a piece with a width only touches the window. */
        private boolean touches(Piece piece) {
            return piece.width() > 0 && (piece.end() == window.start() || piece.start() == window.end());
        }
    }
}
