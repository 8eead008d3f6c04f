package lampproof.waveform;

import java.util.ArrayList;
import java.util.List;
import lampproof.unit.Engineering;

/**
 * Checks rows and passes them on: times must not fall, numbers must be finite; counts the rows.
 *
 * <p>Equal times are the two sides of an edge. Three or more points that share a time cannot be one edge: the time
 * column was written with too few digits.
 */
public final class CheckedRows {

    private static final int POINTS_OF_AN_EDGE = 2;

    /** Beyond any value of a circuit; instruments write numbers such as 9.9e37 for an over-range sample. */
    private static final double OVER_RANGE = 1e30;

    private final FileFaults faults;
    private final String unit;
    private final List<Signal> chosen;
    private final SampleClock clock;
    private final double[] factors;
    private final int[] sources;
    private final double[] values;
    private final int wantedRun;
    private final BlockWriter writer;
    private final List<Remark> remarks = new ArrayList<>();
    private final RowNumberCheck counter = new RowNumberCheck();

    private long rows;
    private int run = 1;
    private double start = Double.NaN;
    private double last = Double.NaN;
    private double firstTime = Double.NaN;
    private double lastTime = Double.NaN;
    private double smallestStep = Double.POSITIVE_INFINITY;
    private int shared = 1;
    private int mostShared = 1;
    private double sharedTime;
    private long sharedPlace;

    /**
     * Starts a pass.
     *
     * @param unit the word for a place in the file: line or row
     */
    public CheckedRows(
            FileFaults faults, String unit, List<Signal> chosen, SampleClock clock, int wantedRun, BlockSink sink) {
        this.faults = faults;
        this.unit = unit;
        this.chosen = chosen;
        this.clock = clock;
        factors = chosen.stream().mapToDouble(Signal::factor).toArray();
        sources = chosen.stream().mapToInt(this::source).toArray();
        values = new double[factors.length];
        this.wantedRun = wantedRun;
        writer = new BlockWriter(values.length, sink);
    }

    public FileFaults faults() {
        return faults;
    }

    public String place(long number) {
        return unit + " " + number;
    }

    /**
     * Checks successive rows as the file writes them and passes them on in SI base units.
     *
     * @param before number of the row before them
     * @param numbers the times, then each chosen signal, then the numbers of the rows if rows are numbered [unit in the
     *     file]; of signals from one column only the first counts
     * @param count number of rows
     */
    public void rows(long before, double[][] numbers, int count) {
        int at = 0;
        while (at < count) {
            int end = Math.min(
                    count, at + writer.waiting().capacity() - writer.waiting().count());
            if (!plain(numbers, at, end)) {
                oneByOne(before, numbers, at, end);
            }
            at = end;
        }
    }

    /**
     * Checks one row as the file writes it and passes it on in SI base units.
     *
     * @param numbers the time, then the chosen signals, then the number of the row if rows are numbered [unit in the
     *     file]
     */
    public void row(long number, double[] numbers) {
        if (numbers.length > values.length + 1) {
            count(number, numbers[values.length + 1]);
        }
        double time = clock.time(numbers[0]);
        requireFinite(number, time, "time");
        if (time <= last) {
            equalOrBack(number, time);
        } else {
            step(time);
        }
        last = time;
        if (wanted()) {
            emit(number, time, numbers);
        }
    }

    public void remark(Remark remark) {
        remarks.add(remark);
    }

    /** Whether a remark excludes figures. */
    public boolean defective() {
        return remarks.stream().anyMatch(Remark::isDefect);
    }

    public boolean severalRuns() {
        return run > 1;
    }

    /** Whether the file was read as one of a single run. */
    public boolean onlyRun() {
        return wantedRun == 0;
    }

    /** Counts a run in a plot of its own that was skipped. */
    public void passOver() {
        run++;
        last = Double.NaN;
        start = Double.NaN;
    }

    public ReadResult finish() {
        writer.end();
        if (rows == 0) {
            throw wantedRun > 1
                    ? faults.whole("run " + wantedRun + " was asked for, the file holds " + run, "")
                    : faults.whole("no row of numbers", "look into the simulator's log");
        }
        if (Double.isInfinite(smallestStep) && mostShared > POINTS_OF_AN_EDGE) {
            throw faults.whole("all " + rows + " points share the time " + Engineering.precise(lastTime, "s"), "");
        }
        if (mostShared > POINTS_OF_AN_EDGE) {
            remarks.add(Remark.note(clipped()));
        }
        return new ReadResult(faults.file(), rows, new Span(firstTime, lastTime), remarks);
    }

    /** The place of the numbers of a signal: that of the first chosen signal of its column. */
    private int source(Signal signal) {
        return 1 + chosen.stream().map(Signal::column).toList().indexOf(signal.column());
    }

    /** Whether the rows of the current run are requested. */
    private boolean wanted() {
        return wantedRun == 0 || wantedRun == run;
    }

    /** Passes on rows without any remark at once; false, with none passed on, if a row may need a remark. */
    private boolean plain(double[][] numbers, int from, int end) {
        Block block = writer.waiting();
        boolean plain = wanted() && numbers.length == values.length + 1 && rising(numbers[0], from, end, block);
        for (int i = 0; plain && i < values.length; i++) {
            plain = values(numbers[sources[i]], from, end, factors[i], block.values(i), block.count());
        }
        if (plain) {
            take(block, end - from);
        }
        return plain;
    }

    /** Appends times to those of a block; false when one is not finite or not above the one before. */
    private boolean rising(double[] numbers, int from, int end, Block block) {
        double[] times = block.times();
        double before = last;
        double least = smallestStep;
        for (int i = from, at = block.count(); i < end; i++, at++) {
            double time = clock.time(numbers[i]);
            if (time <= before || !Double.isFinite(time)) {
                return false;
            }
            if (time - before < least) {
                least = time - before;
            }
            times[at] = time;
            before = time;
        }
        smallestStep = least;
        return true;
    }

    /** Appends values to those of a column; false when one is not finite or over-range. */
    private static boolean values(double[] numbers, int from, int end, double factor, double[] into, int first) {
        for (int i = from, at = first; i < end; i++, at++) {
            double value = numbers[i] * factor;
            if (!possible(value)) {
                return false;
            }
            into[at] = value;
        }
        return true;
    }

    private static boolean possible(double value) {
        return Math.abs(value) < OVER_RANGE;
    }

    private void take(Block block, int count) {
        double first = block.times()[block.count()];
        start = Double.isNaN(last) ? first : start;
        firstTime = rows == 0 ? first : firstTime;
        last = block.times()[block.count() + count - 1];
        lastTime = last;
        shared = 1;
        rows += count;
        writer.written(count);
    }

    private void oneByOne(long before, double[][] numbers, int from, int end) {
        double[] row = new double[numbers.length];
        for (int at = from; at < end; at++) {
            for (int i = 0; i < row.length; i++) {
                row[i] = numbers[i][at];
            }
            row(before + at + 1, row);
        }
    }

    private void count(long number, double counted) {
        double before = counter.before();
        if (!counter.follows(counted)) {
            throw faults.rowsMissing(place(number), before, counted);
        }
    }

    private void emit(long number, double time, double[] numbers) {
        for (int i = 0; i < values.length; i++) {
            double value = numbers[sources[i]] * factors[i];
            if (!possible(value)) {
                requireFinite(number, value, chosen.get(i).name());
                throw faults.overRange(place(number), chosen.get(i).name(), numbers[sources[i]]);
            }
            values[i] = value;
        }
        firstTime = rows == 0 ? time : firstTime;
        lastTime = time;
        rows++;
        writer.row(time, values);
    }

    private void step(double time) {
        if (Double.isNaN(last)) {
            start = time;
        } else {
            smallestStep = Math.min(smallestStep, time - last);
        }
        shared = 1;
    }

    private void equalOrBack(long number, double time) {
        if (time < last) {
            back(number, time);
        } else if (++shared > mostShared) {
            mostShared = shared;
            sharedTime = time;
            sharedPlace = number;
        }
    }

    private void back(long number, double time) {
        if (time > start) {
            throw faults.backwards(place(number), last, time);
        }
        if (wantedRun == 0) {
            throw faults.severalRuns(place(number), last, time);
        }
        run++;
        start = time;
        shared = 1;
    }

    private void requireFinite(long number, double value, String name) {
        if (!Double.isFinite(value)) {
            throw faults.notFinite(place(number), name, String.valueOf(value));
        }
    }

    private String clipped() {
        return faults.file() + ", " + place(sharedPlace) + ": " + mostShared + " points share the time "
                + Engineering.precise(sharedTime, "s") + ": time has too few digits, its resolution is "
                + Engineering.precise(smallestStep, "s");
    }
}
