package lampproof.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampproof.waveform.Progress;
import lampproof.waveform.Reading;
import lampproof.waveform.RowSink;
import lampproof.waveform.Waveforms;

/**
 * Feeds many measurements in one pass over the rows of a waveform file.
 *
 * <p>First the channels and measurements are named, then the file is run through, then each measurement holds its
 * result.
 */
public final class MeasuringPass implements RowSink {

    private record Term(int column, double gain) {}

    private record Source(List<Term> terms, double offset) {}

    private final Between between;
    private final List<String> columns = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private final Map<Window, List<Measurement>> measurements = new LinkedHashMap<>();

    private Gauge[] gauges = {};
    private double[] levels = {};
    private Piece piece;

    /** A pass over waveforms that run straight between their points. */
    public MeasuringPass() {
        this(Between.STRAIGHT);
    }

    /** A pass over waveforms that behave in a stated way between their points. */
    public MeasuringPass(Between between) {
        this.between = between;
    }

    /** A signal of the file as it is. */
    public Channel channel(String signal) {
        return channel(signal, Map.of(signal, 1.0), 0);
    }

    /** A signal of the file times a gain [-]. */
    public Channel channel(String signal, double gain) {
        return channel(signal, Map.of(signal, gain), 0);
    }

    /** A weighted sum of signals plus an offset [unit of the channel], under a name of its own. */
    public Channel channel(String name, Map<String, Double> gains, double offset) {
        List<Term> terms = new ArrayList<>();
        gains.forEach((signal, gain) -> terms.add(new Term(column(signal), gain)));
        sources.add(new Source(List.copyOf(terms), offset));
        return new Channel(sources.size() - 1, name);
    }

    /** Has a measurement fed. */
    public <M extends Measurement> M add(M measurement) {
        measurements
                .computeIfAbsent(measurement.window(), w -> new ArrayList<>())
                .add(measurement);
        return measurement;
    }

    /** The signals that the channels are made of, in the order in which {@link #row} wants their values. */
    public List<String> columns() {
        return List.copyOf(columns);
    }

    /** Runs a file through. */
    public Reading over(Waveforms file) {
        return over(file, Progress.NONE);
    }

    /** Runs a file through and tells the progress. */
    public Reading over(Waveforms file, Progress progress) {
        return file.rows(columns, this, progress);
    }

    @Override
    public void row(double time, double[] values) {
        if (piece == null) {
            begin();
            set(values);
            piece.begin(time, levels);
            return;
        }
        set(values);
        piece.advance(time, levels);
        for (Gauge gauge : gauges) {
            gauge.take(piece);
        }
    }

    private int column(String signal) {
        if (!columns.contains(signal)) {
            columns.add(signal);
        }
        return columns.indexOf(signal);
    }

    private void begin() {
        levels = new double[sources.size()];
        piece = new Piece(levels.length, between);
        gauges = measurements.entrySet().stream()
                .map(e -> new Gauge(e.getKey(), e.getValue(), new Piece(levels.length, between)))
                .toArray(Gauge[]::new);
    }

    private void set(double[] values) {
        for (int i = 0; i < levels.length; i++) {
            Source source = sources.get(i);
            double level = source.offset();
            for (int k = 0; k < source.terms().size(); k++) {
                Term term = source.terms().get(k);
                level += term.gain() * values[term.column()];
            }
            levels[i] = level;
        }
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
