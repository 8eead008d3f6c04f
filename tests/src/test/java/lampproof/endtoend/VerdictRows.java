package lampproof.endtoend;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The verdicts of a run folder, as the file tells them. */
final class VerdictRows {

    private VerdictRows() {}

    /** The figures of a deck that have a verdict. */
    static List<String> figures(Path run, String deck, String verdict) throws IOException {
        return rows(run).stream()
                .filter(row ->
                        row.get("deck").equals(deck) && row.get("verdict").equals(verdict))
                .map(row -> row.get("figure"))
                .toList();
    }

    /** Every row. */
    static List<CSVRecord> rows(Path run) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader table = Files.newBufferedReader(run.resolve("verdict.csv"))) {
            return format.parse(table).getRecords();
        }
    }
}
