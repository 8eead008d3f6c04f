package lampproof.spec;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.regex.Pattern;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a spec as understood: every row, with its origin in a column of its own.
 *
 * <p>{@link SpecReader} gives back the same values bit for bit. Notes that a spreadsheet would run as a formula get an
 * apostrophe in front; a note may also be cut at semicolons or tabs there, so what follows them is looked at too.
 */
public final class SpecWriter {

    private static final String HEADING = "The spec as understood: origin tells what was given and what was filled in.";
    private static final Pattern FORMULA = Pattern.compile("(^|[;\\t])(\\s*[=+@-])");

    private SpecWriter() {}

    /**
     * Writes the rows to a temporary name and moves the whole file into place.
     *
     * @throws UserFault when the file cannot be written
     */
    public static void write(Path file, List<SpecRow> rows) {
        Path part = file.resolveSibling("." + file.getFileName() + "." + Long.toHexString(System.nanoTime()) + ".part");
        try {
            replace(file, part, text(rows));
        } catch (IOException e) {
            String next = "check that the folder is there and may be written to";
            throw UserFault.badInput(Finding.of("the file cannot be written", file.toString(), next));
        }
    }

    private static void replace(Path file, Path part, String text) throws IOException {
        try {
            Files.writeString(part, text, StandardOpenOption.CREATE_NEW);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** The rows as a table. */
    public static String text(List<SpecRow> rows) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter table = new CSVPrinter(text, format())) {
            for (SpecRow row : rows) {
                table.printRecord(cells(row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static CSVFormat format() {
        return CSVFormat.DEFAULT
                .builder()
                .setRecordSeparator('\n')
                .setCommentMarker('#')
                .setHeaderComments(HEADING)
                .setHeader(Column.words().toArray(String[]::new))
                .get();
    }

    private static List<String> cells(SpecRow row) {
        String note = FORMULA.matcher(row.note()).replaceAll("$1'$2");
        String origin = row.origin().word();
        if (row.setting() instanceof Amount amount) {
            Dimension dimension = Vocabulary.quantity(row.name()).dimension();
            String unit = UnitWriter.unit(dimension, amount.typical() == 0 ? amount.most() : amount.typical());
            String least = amount.isSingle() ? "" : UnitWriter.number(dimension, amount.least(), unit);
            String most = amount.isSingle() ? "" : UnitWriter.number(dimension, amount.most(), unit);
            String typical = UnitWriter.number(dimension, amount.typical(), unit);
            return List.of(row.name(), least, typical, most, unit, note, origin);
        }
        return List.of(row.name(), "", ((Word) row.setting()).text(), "", "", note, origin);
    }
}
