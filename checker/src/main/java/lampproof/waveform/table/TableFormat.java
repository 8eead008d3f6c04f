package lampproof.waveform.table;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import lampproof.waveform.CheckedRows;
import lampproof.waveform.DecodedFile;
import lampproof.waveform.FileFormat;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.Remark;
import lampproof.waveform.SampleClock;
import lampproof.waveform.Signal;
import lampproof.waveform.Span;

/** A table of numbers as text. */
public final class TableFormat implements FileFormat {

    private final TableLayout layout;

    private TableFormat(TableLayout layout) {
        this.layout = layout;
    }

    /**
     * Recognises a table.
     *
     * @throws lampproof.fault.UserFault if the file is not a table, or has no transient record
     */
    public static TableFormat of(DecodedFile content, ReadOptions options) throws IOException {
        return new TableFormat(TableRecognizer.recognize(content, options, new TableFaults(content.name())));
    }

    @Override
    public String words() {
        return layout.words();
    }

    @Override
    public List<Signal> signals() {
        return layout.signals();
    }

    @Override
    public SampleClock clock() {
        return layout.clock();
    }

    @Override
    public String place() {
        return "line";
    }

    @Override
    public List<Remark> remarks() {
        return layout.remarks();
    }

    @Override
    public boolean slow() {
        return true;
    }

    @Override
    public Optional<Span> spanFromEnds(DecodedFile content) throws IOException {
        return new TableSpanReader(content, layout).span();
    }

    @Override
    public void read(DecodedFile content, List<Signal> chosen, CheckedRows rows) throws IOException {
        try (InputStream in = content.openText()) {
            if (layout.scannable()) {
                new PlainTable(layout, chosen, rows).read(in, content.whole());
            } else {
                new CsvTable(layout, chosen, rows).read(in);
            }
        }
    }
}
