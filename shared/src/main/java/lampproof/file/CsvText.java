package lampproof.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table as comma-separated text.
 *
 * <p>A cell that a spreadsheet would run as a formula gets an apostrophe in front; a cell may also be cut at semicolons
 * or tabs there, so what follows them is checked too. Numbers stay as they are.
 */
public final class CsvText {

    private static final Pattern FORMULA = Pattern.compile("(^|[;\\t])(\\s*[=+@-])");
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");

    private CsvText() {}

    /** The rows below a header line. */
    public static String of(List<String> header, List<List<String>> rows) {
        return of(CSVFormat.DEFAULT, header, rows);
    }

    /** The rows below a comment line and a header line. */
    public static String of(String comment, List<String> header, List<List<String>> rows) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeaderComments(comment)
                .get();
        return of(format, header, rows);
    }

    private static String of(CSVFormat base, List<String> header, List<List<String>> rows) {
        CSVFormat format = base.builder()
                .setRecordSeparator('\n')
                .setHeader(header.toArray(String[]::new))
                .get();
        StringBuilder text = new StringBuilder();
        try (CSVPrinter table = new CSVPrinter(text, format)) {
            for (List<String> row : rows) {
                table.printRecord(row.stream().map(CsvText::safe));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static String safe(String cell) {
        return NUMBER.matcher(cell).matches() ? cell : FORMULA.matcher(cell).replaceAll("$1'$2");
    }
}
