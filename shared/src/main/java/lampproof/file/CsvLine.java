package lampproof.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Cuts one line of a table into trimmed cells. */
public final class CsvLine {

    private CsvLine() {}

    /** The cells, or nothing when the quotes of the line do not match. */
    public static Optional<List<String>> cells(String line, char separator) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreSurroundingSpaces(true)
                .get();
        try (CSVParser parser = CSVParser.parse(line, format)) {
            return Optional.of(parser.getRecords().stream()
                    .flatMap(CSVRecord::stream)
                    .map(CsvLine::trimmed)
                    .toList());
        } catch (IOException | UncheckedIOException e) {
            return Optional.empty();
        }
    }

    /** Blank lines and lines that begin with # mean nothing, even after a spreadsheet has added its separators. */
    public static boolean isComment(String line, char separator) {
        String text = line.replace(separator, ' ').strip();
        return text.isEmpty() || text.startsWith("#") || text.startsWith("\"#");
    }

    /** Spreadsheets and web pages put blanks around numbers that do not break. */
    private static String trimmed(String cell) {
        return cell.replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2009', ' ')
                .strip();
    }
}
