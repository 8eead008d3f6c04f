package lampproof.waveform.table;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import lampproof.waveform.CheckedRows;
import lampproof.waveform.Remark;
import lampproof.waveform.Signal;
import lampproof.waveform.TruncationCheck;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a table with quoted cells or decimal commas through Commons CSV. */
final class CsvTable {

    private final TableLayout layout;
    private final CheckedRows rows;
    private final TruncationCheck truncation;
    private final LineReader lines;
    private final TableFaults faults;

    CsvTable(TableLayout layout, List<Signal> chosen, CheckedRows rows) {
        this.layout = layout;
        this.rows = rows;
        faults = new TableFaults(rows.faults().file());
        truncation = new TruncationCheck(rows);
        lines = new LineReader(layout, new TableCells(layout, chosen), rows, truncation);
    }

    void read(InputStream in) throws IOException {
        in.skipNBytes(layout.firstByte());
        CheckedTextStream bytes = new CheckedTextStream(in);
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
        truncation.end();
    }

    private void readAll(CSVParser parser, CheckedTextStream bytes) {
        Iterator<CSVRecord> records = parser.iterator();
        while (records.hasNext()) {
            CSVRecord cells = records.next();
            boolean last = !records.hasNext();
            bytes.cellsEnded();
            lines.cells(layout.firstLine() + cells.getRecordNumber() - 1, cells.toList(), !last || bytes.lineEnded());
        }
    }

    private void readFault(IOException e) throws IOException {
        if (e instanceof EOFException) {
            rows.remark(Remark.defect(faults.file() + ": the packed file ends early, file incomplete"));
        } else if (e instanceof CSVException) {
            throw faults.whole("quotes are out of order: " + e.getMessage(), "");
        } else {
            throw e;
        }
    }
}
