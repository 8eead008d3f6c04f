package lampproof.spec;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lampproof.file.AtomicFile;
import lampproof.file.CsvText;
import lampproof.unit.Dimension;
import lampproof.unit.QuantityWriter;

/**
 * Writes a spec as understood: every row, with its origin in a column of its own.
 *
 * <p>{@link SpecReader} reads back the same values bit for bit.
 */
public final class SpecWriter {

    /** The first line of every table that lampproof writes, by which it knows its own again. */
    public static final String HEADING = "# The spec as understood: origin is given or default.";

    private SpecWriter() {}

    /**
     * Writes the rows to a file.
     *
     * @throws lampproof.fault.UserFault when the file cannot be written
     */
    public static void write(Path file, List<SpecRow> rows) {
        AtomicFile.write(file, text(rows));
    }

    /** The rows as a table. */
    public static String text(List<SpecRow> rows) {
        return CsvText.of(
                HEADING.substring(2),
                Keyword.words(Column.class),
                rows.stream().map(SpecWriter::cells).toList());
    }

    private static List<String> cells(SpecRow row) {
        return row.map(amount -> cells(row, amount), word -> cells(row, List.of("", word, "", "")));
    }

    private static List<String> cells(SpecRow row, Amount amount) {
        Dimension dimension = Vocabulary.quantity(row.name()).dimension();
        String unit = QuantityWriter.unit(dimension, amount.typical() == 0 ? amount.most() : amount.typical());
        String least = amount.isSingle() ? "" : QuantityWriter.number(dimension, amount.least(), unit);
        String most = amount.isSingle() ? "" : QuantityWriter.number(dimension, amount.most(), unit);
        return cells(row, List.of(least, QuantityWriter.number(dimension, amount.typical(), unit), most, unit));
    }

    /** The name, the cells from least value to unit, note and origin. */
    private static List<String> cells(SpecRow row, List<String> value) {
        return Stream.of(
                        List.of(row.name()),
                        value,
                        List.of(row.note(), row.origin().word()))
                .flatMap(List::stream)
                .toList();
    }
}
