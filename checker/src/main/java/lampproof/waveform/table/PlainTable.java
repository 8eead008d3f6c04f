package lampproof.waveform.table;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import lampproof.waveform.CheckedRows;
import lampproof.waveform.FileFaults;
import lampproof.waveform.Remark;
import lampproof.waveform.Signal;
import lampproof.waveform.TruncationCheck;

/**
 * Reads a plain table of numbers straight from its bytes.
 *
 * <p>Blocks of lines are parsed in parallel and passed on in their order. A fixed number of blocks is in memory at a
 * time.
 */
final class PlainTable {

    private static final int WORKERS = Runtime.getRuntime().availableProcessors();

    private record Parsed(TextBlocks.Block block, ParsedRows rows, boolean regular) {}

    private final TableLayout layout;
    private final TableCells cells;
    private final CheckedRows rows;
    private final TruncationCheck truncation;
    private final LineReader lines;
    private final int width;
    private final Deque<ParsedRows> spare = new ArrayDeque<>();
    private long line;

    PlainTable(TableLayout layout, List<Signal> chosen, CheckedRows rows) {
        this.layout = layout;
        this.rows = rows;
        cells = new TableCells(layout, chosen);
        truncation = new TruncationCheck(rows);
        lines = new LineReader(layout, cells, rows, truncation);
        width = cells.width();
        line = layout.firstLine() - 1L;
    }

    /**
     * Reads the table.
     *
     * @param small whether the file is too small for parallel parsing
     */
    void read(InputStream in, boolean small) throws IOException {
        in.skipNBytes(layout.firstByte());
        TextBlocks blocks = new TextBlocks(in);
        if (small) {
            read(blocks, Runnable::run);
        } else {
            ExecutorService workers = Executors.newFixedThreadPool(WORKERS, PlainTable::worker);
            try {
                read(blocks, workers);
            } finally {
                workers.shutdownNow();
            }
        }
        end(blocks);
    }

    private void read(TextBlocks blocks, Executor workers) throws IOException {
        Deque<CompletableFuture<Parsed>> waiting = new ArrayDeque<>();
        TextBlocks.Block block = blocks.next();
        while (block != null || !waiting.isEmpty()) {
            if (block != null) {
                TextBlocks.Block next = block;
                ParsedRows into = spare.isEmpty() ? new ParsedRows(width) : spare.removeLast();
                waiting.add(CompletableFuture.supplyAsync(() -> parsed(next, into), workers));
                block = blocks.next();
            }
            if (block == null || waiting.size() > 2 * WORKERS) {
                Parsed parsed = waiting.remove().join();
                emit(parsed);
                blocks.recycle(parsed.block());
                spare.addLast(parsed.rows().cleared());
            }
        }
        if (!blocks.done()) {
            throw faults().at(rows.place(line + 1), "the line is too long", "");
        }
    }

    private Parsed parsed(TextBlocks.Block block, ParsedRows into) {
        return new Parsed(block, into, new BlockParser(cells, layout.delimiter()).parse(block, into));
    }

    private void emit(Parsed parsed) {
        if (!parsed.regular() || lines.closed()) {
            line = lines.read(parsed.block(), line);
            return;
        }
        truncation.rowFollows();
        rows.rows(line, parsed.rows().columns(), parsed.rows().count());
        line += parsed.rows().count();
    }

    private void end(TextBlocks blocks) {
        truncation.end();
        if (blocks.endedEarly()) {
            rows.remark(Remark.defect(faults().file() + ": the packed file ends early, file incomplete"));
        } else if (layout.closedByTrailer() && !lines.closed() && !rows.severalRuns()) {
            rows.remark(
                    Remark.defect(faults().file() + ": the closing line of the simulator is missing: run aborted?"));
        }
    }

    private FileFaults faults() {
        return rows.faults();
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "waveform parser");
        thread.setDaemon(true);
        return thread;
    }
}
