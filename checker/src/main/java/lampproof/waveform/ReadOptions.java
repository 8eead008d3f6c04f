package lampproof.waveform;

import java.util.List;

/**
 * What the user knows about a file and the file does not contain.
 *
 * @param names names of the signals, in order, for a table without names; empty when not known
 * @param decimal the decimal mark, if the table is ambiguous
 * @param run number of the run to read in a file of several, counted from 1; 0 when there is but one
 */
public record ReadOptions(List<String> names, Decimal decimal, int run) {

    /** Nothing is known. */
    public static final ReadOptions NONE = new ReadOptions(List.of(), Decimal.AS_FOUND, 0);

    /** The mark in front of decimals. */
    public enum Decimal {
        /** Recognised from the file; an ambiguous file is rejected. */
        AS_FOUND,
        /** {@code 1.000} is one. */
        POINT,
        /** {@code 1.000} is one thousand. */
        COMMA
    }

    /** Copies the names. */
    public ReadOptions {
        names = List.copyOf(names);
    }

    /** Only the names are known. */
    public static ReadOptions named(List<String> names) {
        return new ReadOptions(names, Decimal.AS_FOUND, 0);
    }

    /** The same with a decimal mark. */
    public ReadOptions with(Decimal mark) {
        return new ReadOptions(names, mark, run);
    }

    /** The same with the number of a run, counted from 1. */
    public ReadOptions withRun(int number) {
        return new ReadOptions(names, decimal, number);
    }
}
