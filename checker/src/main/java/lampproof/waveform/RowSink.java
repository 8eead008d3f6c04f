package lampproof.waveform;

/** Receives the rows of waveforms one by one, in the order of time. */
@FunctionalInterface
public interface RowSink {

    /**
     * Receives one row.
     *
     * @param time time [s], never before the time of the row before; equal times are the two sides of an edge
     * @param values the chosen signals [SI base unit], in the order chosen; the array is reused for each row
     */
    void row(double time, double[] values);
}
