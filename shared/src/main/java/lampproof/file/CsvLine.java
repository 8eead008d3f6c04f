package lampproof.file;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Cuts one line of a table into trimmed cells, and further lines where a cell in quotes goes on over them. */
public final class CsvLine {

    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

    private CsvLine() {}

    /**
     * A record.
     *
     * @param cells its trimmed cells
     * @param lines the lines that it takes [-]
     */
    record Whole(List<String> cells, int lines) {

        private static Whole of(CSVRecord record) {
            long ends = record.stream()
                    .flatMap(cell -> LINE_END.matcher(cell).results())
                    .count();
            return new Whole(record.stream().map(CsvLine::trimmed).toList(), 1 + (int) ends);
        }
    }

    /** The record that begins at a place of a text, or nothing when its quotes do not match. */
    static Optional<Whole> at(int start, String text, char separator) {
        try (Reader rest = new StringReader(text)) {
            rest.skip(start);
            return first(rest, separator);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<Whole> first(Reader rest, char separator) {
        try (CSVParser parser = CSVParser.parse(rest, format(separator))) {
            return parser.stream().findFirst().map(Whole::of);
        } catch (IOException | UncheckedIOException e) {
            return Optional.empty();
        }
    }

    private static CSVFormat format(char separator) {
        return CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreSurroundingSpaces(true)
                .get();
    }

    /** The cells, or nothing when the quotes of the line do not match. */
    public static Optional<List<String>> cells(String line, char separator) {
        try (CSVParser parser = CSVParser.parse(line, format(separator))) {
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
