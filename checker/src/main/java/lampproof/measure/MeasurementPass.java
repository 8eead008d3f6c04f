package lampproof.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampproof.waveform.Block;
import lampproof.waveform.BlockSink;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Waveforms;

/**
 * Passes the rows of a waveform file to many measurements at once.
 *
 * <p>First the channels and measurements are added, then the file is read, then each measurement has its result.
 */
public final class MeasurementPass implements BlockSink {

    /** The source of a channel: columns with their gains, and an offset. */
    private static final class Source {
        private final Map<Integer, Double> terms;
        private final double offset;
        private double[] joined = {};

        /**
         * Joins columns.
         *
         * @param terms place of each column among those of the pass, and its gain
         */
        Source(Map<Integer, Double> terms, double offset) {
            this.terms = terms;
            this.offset = offset;
        }

        boolean same(Source other) {
            return terms.equals(other.terms) && offset == other.offset;
        }

        /** The levels of rows: a column, or a sum of columns. */
        double[] levels(Block block) {
            return plain() ? block.values(terms.keySet().iterator().next()) : joined(block);
        }

        private boolean plain() {
            return offset == 0 && terms.size() == 1 && terms.containsValue(1.0);
        }

        private double[] joined(Block block) {
            if (joined.length < block.count()) {
                joined = new double[block.capacity()];
            }
            Arrays.fill(joined, 0, block.count(), offset);
            terms.forEach((column, gain) -> add(gain, block.values(column), block.count()));
            return joined;
        }

        private void add(double gain, double[] values, int count) {
            for (int i = 0; i < count; i++) {
                joined[i] += gain * values[i];
            }
        }
    }

    private final List<String> columns = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private final ParallelMeasurements all;
    private final ParallelMeasurements sparse;
    private final Decimator secondPoints;
    private final Interpolation interpolation;
    private Points before;

    /** A pass over waveforms that run straight between their points. */
    public MeasurementPass() {
        this(Interpolation.LINEAR);
    }

    /** A pass over waveforms that behave in a stated way between their points. */
    public MeasurementPass(Interpolation interpolation) {
        this.interpolation = interpolation;
        all = new ParallelMeasurements();
        sparse = new ParallelMeasurements();
        secondPoints = new Decimator(sparse);
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
        Map<Integer, Double> terms = new LinkedHashMap<>();
        gains.forEach((signal, gain) -> terms.put(column(signal), gain));
        return new Channel(place(new Source(terms, offset)), name);
    }

    /** The place of a source among those of the pass; one that is there already serves again. */
    private int place(Source source) {
        int place = 0;
        while (place < sources.size() && !sources.get(place).same(source)) {
            place++;
        }
        if (place == sources.size()) {
            sources.add(source);
        }
        return place;
    }

    /** Adds a measurement. */
    public <M extends Measurement> M add(M measurement) {
        all.add(measurement);
        return measurement;
    }

    /**
     * Adds a measurement that receives every second point only, to show how much a figure depends on the points of the
     * record. Its result is valid after {@link #over}.
     */
    public <M extends Measurement> M addSparse(M measurement) {
        sparse.add(measurement);
        return measurement;
    }

    /** The signals of the channels, in the order of the values of {@link #block}. */
    public List<String> columns() {
        return List.copyOf(columns);
    }

    /** Reads a file. */
    public ReadResult over(Waveforms file) {
        ReadResult reading = file.rows(columns, this);
        secondPoints.end();
        all.await();
        sparse.await();
        return reading;
    }

    @Override
    public void block(Block block) {
        all.await();
        Points points = points(block);
        if (before == null) {
            all.feed(points);
        } else {
            before.add(points, 0);
            all.feed(before, points);
        }
        before = endOf(points);
        if (!sparse.none()) {
            secondPoints.take(points);
        }
    }

    private Points points(Block block) {
        double[][] levels = sources.stream().map(source -> source.levels(block)).toArray(double[][]::new);
        return new Points(interpolation, block.times(), levels, block.count());
    }

    /** The last point alone, with space for the next one. */
    private Points endOf(Points points) {
        Points end = new Points(sources.size(), 2, interpolation);
        end.add(points, points.count() - 1);
        return end;
    }

    private int column(String signal) {
        if (!columns.contains(signal)) {
            columns.add(signal);
        }
        return columns.indexOf(signal);
    }
}
