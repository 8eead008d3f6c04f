package lampproof.waveform.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lampproof.waveform.BlockSink;

/** Files for tests and the rows that come out of them. */
public final class Recorded {

    private Recorded() {}

    /** A file recorded from a simulator, beside the deck that made it. */
    public static Path resource(String name) {
        try {
            return Path.of(Recorded.class.getResource(name).toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The bytes of such a file. */
    public static byte[] bytes(String name) {
        try {
            return Files.readAllBytes(resource(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every row: time, then the signals asked for. */
    public static List<double[]> rows(WaveformFile file, String... names) {
        List<double[]> rows = new ArrayList<>();
        file.rows(List.of(names), sink(rows));
        return rows;
    }

    /** Keeps the rows that it takes. */
    public static BlockSink sink(List<double[]> rows) {
        return block -> block.each((time, values) -> {
            double[] row = new double[values.length + 1];
            row[0] = time;
            System.arraycopy(values, 0, row, 1, values.length);
            rows.add(row);
        });
    }
}
