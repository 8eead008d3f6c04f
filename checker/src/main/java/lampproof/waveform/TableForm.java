package lampproof.waveform;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/**
 * A table of numbers as text.
 *
 * @param layout how it is laid out
 */
record TableForm(TableLayout layout) implements Form {

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
    public Optional<Span> spanByItsEnds(Content content) throws IOException {
        return new TableEnds(content, layout).span();
    }

    @Override
    public void read(Content content, List<Signal> chosen, CheckedRows rows) throws IOException {
        try (InputStream in = content.openText()) {
            if (layout.scannable()) {
                new PlainTable(layout, chosen, rows).read(in, content.whole());
            } else {
                new CsvTable(layout, chosen, rows).read(in);
            }
        }
    }
}
