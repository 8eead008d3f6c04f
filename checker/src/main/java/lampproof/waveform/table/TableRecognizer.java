package lampproof.waveform.table;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lampproof.waveform.DecodedFile;
import lampproof.waveform.NumberNotation;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.Remark;
import lampproof.waveform.SampleClock;

/** Recognises the layout of a table of numbers by its first lines. */
final class TableRecognizer {

    private final DecodedFile content;
    private final TableFaults faults;
    private final ReadOptions options;
    private final NumberBlock block;
    private final TableHeader header;

    private TableRecognizer(DecodedFile content, TableFaults faults, ReadOptions options, NumberBlock block) {
        this.content = content;
        this.faults = faults;
        this.options = options;
        this.block = block;
        this.header = new HeaderSearch(block, faults).header();
    }

    /**
     * Recognises a table.
     *
     * @throws lampproof.fault.UserFault if the file is not a table, or has no transient record
     */
    static TableLayout recognize(DecodedFile content, ReadOptions options, TableFaults faults) throws IOException {
        List<HeadLine> lines = HeadLine.of(content.head(), content.whole());
        lines.stream().filter(HeadLine::controls).findFirst().ifPresent(line -> {
            throw line.number() == 1 ? faults.unknownForm() : faults.control("line " + line.number());
        });
        NumberBlock block = NumberBlock.find(lines, content.whole()).orElseThrow(faults::unknownForm);
        return new TableRecognizer(content, faults, options, block).layout();
    }

    private TableLayout layout() throws IOException {
        NumberNotation numbers = new TableNumbers(content, faults, options.decimal()).of(block);
        List<Remark> remarks = new ArrayList<>();
        TableColumns columns = header.present()
                ? TableColumns.named(block, header, faults, remarks)
                : TableColumns.nameless(block, options.names(), faults);
        HeadLine first = block.lines().get(block.first());
        return new TableLayout(
                block.delimiter(),
                numbers,
                quoted(),
                block.columns(),
                first.number(),
                first.offset(),
                columns.scale(),
                header.clock().orElse(SampleClock.ofUnit(columns.scale().factor())),
                columns.copies(),
                columns.counter(),
                empty(block.rows()),
                columns.signals(),
                header.line().replaceAll("\\s+", ""),
                words(columns, numbers),
                remarks);
    }

    private List<Integer> empty(List<List<String>> rows) {
        return IntStream.range(0, block.columns())
                .filter(c -> rows.stream().allMatch(row -> row.get(c).isEmpty()))
                .boxed()
                .toList();
    }

    private boolean quoted() {
        return IntStream.range(block.first(), block.lines().size())
                .anyMatch(i -> block.lines().get(i).text().indexOf('"') >= 0);
    }

    private String words(TableColumns columns, NumberNotation numbers) {
        List<String> words = new ArrayList<>();
        words.add("table with "
                + switch (block.delimiter()) {
                    case '\t' -> "tabs";
                    case ';' -> "semicolons";
                    case ',' -> "commas";
                    default -> "blanks";
                }
                + " between the columns");
        words.add(header.present() ? "names" : "no names");
        if (numbers == NumberNotation.COMMA) {
            words.add("decimal comma");
        }
        if (numbers == NumberNotation.SUFFIXED) {
            words.add("numbers with scale letters");
        }
        if (!columns.copies().isEmpty()) {
            words.add("time repeated in front of each signal");
        }
        if (header.clock().isPresent()) {
            words.add("samples counted");
        }
        if (!columns.scale().unit().isEmpty() && columns.scale().factor() != 1) {
            words.add("time in " + columns.scale().unit());
        }
        int count = columns.signals().size();
        words.add(count == 1 ? "1 signal" : count + " signals");
        return String.join(", ", words);
    }
}
