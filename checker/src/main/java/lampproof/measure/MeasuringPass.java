package lampproof.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

    /** What a channel is made of: columns, their gains, and an offset. */
    private static final class Source {
        private final int[] columns;
        private final double[] gains;
        private final double offset;

        Source(int[] columns, double[] gains, double offset) {
            this.columns = columns;
            this.gains = gains;
            this.offset = offset;
        }

        double level(double[] values) {
            double level = offset;
            for (int i = 0; i < columns.length; i++) {
                level += gains[i] * values[columns[i]];
            }
            return level;
        }
    }

    private final List<String> columns = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private final Gauges all;
    private final Gauges sparse;
    private final SecondPoints secondPoints;
    private double[] levels = {};

    /** A pass over waveforms that run straight between their points. */
    public MeasuringPass() {
        this(Between.STRAIGHT);
    }

    /** A pass over waveforms that behave in a stated way between their points. */
    public MeasuringPass(Between between) {
        all = new Gauges(between);
        sparse = new Gauges(between);
        secondPoints = new SecondPoints(sparse);
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
        List<Map.Entry<String, Double>> terms = List.copyOf(gains.entrySet());
        sources.add(new Source(
                terms.stream().mapToInt(term -> column(term.getKey())).toArray(),
                terms.stream().mapToDouble(Map.Entry::getValue).toArray(),
                offset));
        return new Channel(sources.size() - 1, name);
    }

    /** Has a measurement fed. */
    public <M extends Measurement> M add(M measurement) {
        all.add(measurement);
        return measurement;
    }

    /**
     * Has a measurement fed with every second point only; it shows how far a figure hangs on the points of the record.
     * Its result stands after {@link #over}.
     */
    public <M extends Measurement> M addSparse(M measurement) {
        sparse.add(measurement);
        return measurement;
    }

    /** The signals that the channels are made of, in the order in which {@link #row} wants their values. */
    public List<String> columns() {
        return List.copyOf(columns);
    }

    /** Runs a file through. */
    public Reading over(Waveforms file) {
        Reading reading = file.rows(columns, this);
        secondPoints.end();
        all.feed();
        sparse.feed();
        return reading;
    }

    @Override
    public void row(double time, double[] values) {
        if (levels.length < sources.size()) {
            levels = new double[sources.size()];
        }
        set(values);
        all.point(time, levels);
        if (!sparse.none()) {
            secondPoints.point(time, levels);
        }
    }

    private int column(String signal) {
        if (!columns.contains(signal)) {
            columns.add(signal);
        }
        return columns.indexOf(signal);
    }

    private void set(double[] values) {
        for (int i = 0; i < levels.length; i++) {
            levels[i] = sources.get(i).level(values);
        }
    }
}
