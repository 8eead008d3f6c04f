package lampproof.spec;

import java.nio.file.Path;
import java.util.List;
import lampproof.file.AtomicFile;
import lampproof.file.CsvText;
import lampproof.unit.Dimension;
import lampproof.unit.QuantityWriter;

/**
 * Writes a spec as understood: every row, with its origin in a column of its own.
 *
 * <p>{@link SpecReader} gives back the same values bit for bit.
 */
public final class SpecWriter {

    /** The first line of every table that lampproof writes, by which it knows its own again. */
    public static final String HEADING =
            "# The spec as understood: origin tells what was given and what was filled in.";

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
                Column.words(),
                rows.stream().map(SpecWriter::cells).toList());
    }

    private static List<String> cells(SpecRow row) {
        String origin = row.origin().word();
        if (row.setting() instanceof Amount amount) {
            Dimension dimension = Vocabulary.quantity(row.name()).dimension();
            String unit = QuantityWriter.unit(dimension, amount.typical() == 0 ? amount.most() : amount.typical());
            String least = amount.isSingle() ? "" : QuantityWriter.number(dimension, amount.least(), unit);
            String most = amount.isSingle() ? "" : QuantityWriter.number(dimension, amount.most(), unit);
            String typical = QuantityWriter.number(dimension, amount.typical(), unit);
            return List.of(row.name(), least, typical, most, unit, row.note(), origin);
        }
        return List.of(row.name(), "", ((Word) row.setting()).text(), "", "", row.note(), origin);
    }
}
