package lampproof.waveform.table;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import lampproof.waveform.NumberNotation;
import lampproof.waveform.Remark;
import lampproof.waveform.SampleClock;
import lampproof.waveform.Signal;

/**
 * How a table of numbers is laid out.
 *
 * @param delimiter the delimiter of cells
 * @param numbers how numbers are written
 * @param quoted whether cells may be quoted
 * @param columns number of cells in a row
 * @param firstLine number of the first row's line
 * @param firstByte place of the first row
 * @param scale the time column
 * @param clock the conversion of the time column into seconds
 * @param copies columns that repeat the time column
 * @param counter the column that numbers the rows, when there is one
 * @param empty columns that are empty in the first rows
 * @param signals the signals
 * @param header the line of names, blanks stripped; empty when there is none
 * @param words the layout in words
 * @param remarks remarks on the layout
 */
record TableLayout(
        char delimiter,
        NumberNotation numbers,
        boolean quoted,
        int columns,
        int firstLine,
        int firstByte,
        Signal scale,
        SampleClock clock,
        List<Integer> copies,
        Optional<Integer> counter,
        List<Integer> empty,
        List<Signal> signals,
        String header,
        String words,
        List<Remark> remarks) {

    private static final Pattern TRAILER = Pattern.compile("End of Xyce\\(TM\\) (Simulation|Parameter Sweep)");

    /** Whether {@link PlainTable} can read it; {@link CsvTable} reads other tables. */
    boolean scannable() {
        return delimiter == Cells.BLANKS || (!quoted && numbers == NumberNotation.POINT);
    }

    /** Whether a line is the sentence that closes a table of Xyce. */
    static boolean trailer(String line) {
        return TRAILER.matcher(line.strip()).matches();
    }

    /** Whether a whole run closes its table with that sentence. */
    boolean closedByTrailer() {
        return delimiter == Cells.BLANKS
                && header.toLowerCase(java.util.Locale.ROOT).startsWith("index");
    }

    /** The name of the column at a place. */
    String name(int column) {
        return signals.stream()
                .filter(s -> s.column() == column)
                .map(Signal::name)
                .findFirst()
                .orElse(scale.name());
    }
}
