package lampproof.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampproof.waveform.Block;
import lampproof.waveform.BlockSink;
import lampproof.waveform.Reading;
import lampproof.waveform.Waveforms;

/**
 * Feeds many measurements in one pass over the rows of a waveform file.
 *
 * <p>First the channels and measurements are named, then the file is run through, then each measurement holds its
 * result.
 */
public final class MeasuringPass implements BlockSink {

    /** What a channel is made of: columns with their gains, and an offset. */
    private static final class Source {
        private final Map<Integer, Double> terms;
        private final double offset;

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

        /** Writes the levels that rows have into an array, from a place on. */
        void write(Block block, double[] into, int first) {
            Arrays.fill(into, first, first + block.count(), offset);
            terms.forEach((column, gain) -> add(block.values(column), block.count(), gain, into, first));
        }

        private static void add(double[] values, int count, double gain, double[] into, int first) {
            for (int i = 0; i < count; i++) {
                into[first + i] += gain * values[i];
            }
        }
    }

    private final List<String> columns = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private final Gauges all;
    private final Gauges sparse;
    private final SecondPoints secondPoints;
    private final Between between;
    private Points points;

    /** A pass over waveforms that run straight between their points. */
    public MeasuringPass() {
        this(Between.STRAIGHT);
    }

    /** A pass over waveforms that behave in a stated way between their points. */
    public MeasuringPass(Between between) {
        this.between = between;
        all = new Gauges();
        sparse = new Gauges();
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

    /** The signals that the channels are made of, in the order in which {@link #block} wants their values. */
    public List<String> columns() {
        return List.copyOf(columns);
    }

    /** Runs a file through. */
    public Reading over(Waveforms file) {
        Reading reading = file.rows(columns, this);
        secondPoints.end();
        all.settle();
        sparse.settle();
        return reading;
    }

    @Override
    public void block(Block block) {
        if (points == null) {
            points = new Points(sources.size(), block.room() + 1, between);
        }
        all.settle();
        points.keepLast();
        int first = points.count();
        System.arraycopy(block.times(), 0, points.times(), first, block.count());
        for (int i = 0; i < sources.size(); i++) {
            sources.get(i).write(block, points.levels(i), first);
        }
        points.hold(block.count());
        all.feed(points);
        if (!sparse.none()) {
            secondPoints.take(points, first);
        }
    }

    private int column(String signal) {
        if (!columns.contains(signal)) {
            columns.add(signal);
        }
        return columns.indexOf(signal);
    }
}
