package lampproof.waveform;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a table with quoted cells or decimal commas through Commons CSV. */
final class CsvTable {

    private final TableLayout layout;
    private final List<Signal> chosen;
    private final CheckedRows rows;
    private final LastRow lastRow;
    private final Faults faults;
    private final double[] values;

    CsvTable(TableLayout layout, List<Signal> chosen, CheckedRows rows) {
        this.layout = layout;
        this.chosen = chosen;
        this.rows = rows;
        faults = rows.faults();
        lastRow = new LastRow(rows);
        values = new double[chosen.size()];
    }

    void read(InputStream in) throws IOException {
        in.skipNBytes(layout.firstByte());
        BoundedCells bytes = new BoundedCells(in);
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(layout.delimiter())
                .setIgnoreEmptyLines(false)
                .setTrim(true)
                .get();
        try (CSVParser parser = CSVParser.builder()
                .setReader(new InputStreamReader(bytes, StandardCharsets.UTF_8))
                .setFormat(format)
                .get()) {
            readAll(parser, bytes);
        } catch (UncheckedIOException e) {
            readFault(e.getCause());
        }
        lastRow.end();
    }

    private void readAll(CSVParser parser, BoundedCells bytes) throws IOException {
        Iterator<CSVRecord> records = parser.iterator();
        while (records.hasNext()) {
            CSVRecord cells = records.next();
            long line = layout.firstLine() - 1L + parser.getCurrentLineNumber();
            bytes.cellsEnded();
            boolean last = !records.hasNext();
            take(line + (last && !bytes.lineEnded() ? 1 : 0), cells, !last || bytes.lineEnded());
        }
    }

    private void readFault(IOException e) throws IOException {
        if (e instanceof EOFException) {
            rows.remark(Remark.spoiling(faults.file() + ": the packed file ends early, file incomplete"));
        } else if (e instanceof CSVException) {
            throw faults.whole("quotes are out of order: " + e.getMessage(), "");
        } else {
            throw e;
        }
    }

    private void take(long line, CSVRecord cells, boolean whole) {
        if (cells.size() == 1 && cells.get(0).isEmpty()) {
            return;
        }
        lastRow.another();
        if (cells.size() > layout.columns()) {
            throw faults.at(rows.place(line), cells.size() + " fields where " + layout.columns() + " are expected", "");
        }
        if (cells.size() < layout.columns()) {
            lastRow.torn(line, cells.size() + " of " + layout.columns() + " fields");
        } else if (numbers(line, cells)) {
            wholeRow(line, cells, whole);
        }
    }

    private void wholeRow(long line, CSVRecord cells, boolean whole) {
        int length = cells.get(cells.size() - 1).length();
        if (!whole && lastRow.cut(length)) {
            lastRow.torn(line, "last number cut short");
            return;
        }
        lastRow.whole(length);
        rows.row(line, layout.numbers().value(cells.get(layout.scale().column())), values);
    }

    private boolean numbers(long line, CSVRecord cells) {
        String scale = cells.get(layout.scale().column());
        for (int copy : layout.copies()) {
            if (!cells.get(copy).equals(scale)) {
                throw faults.copiesDiffer(rows.place(line));
            }
        }
        boolean good = isNumber(line, layout.scale().column(), scale);
        for (int i = 0; i < values.length && good; i++) {
            int column = chosen.get(i).column();
            good = isNumber(line, column, cells.get(column));
            values[i] = layout.numbers().value(cells.get(column));
        }
        return good;
    }

    private boolean isNumber(long line, int column, String text) {
        if (!Double.isNaN(layout.numbers().value(text))) {
            return true;
        }
        if (NumberText.notFinite(text)) {
            throw faults.notFinite(rows.place(line), layout.name(column), text);
        }
        lastRow.torn(line, "'" + text + "' in column '" + layout.name(column) + "' is not a number");
        return false;
    }
}
