package lampproof.spec;

import java.io.Reader;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;

/**
 * Reads a spec table: {@code quantity,min,typ,max,unit,note}, one row a quantity or a choice.
 *
 * <p>Columns may be in any order, separated by comma, semicolon or tab. Names do not heed the letter case, units do.
 * Everything that is wrong is collected first and thrown as one fault.
 */
public final class SpecReader {

    private final Faults faults;
    private final List<String> required;
    private final Map<String, Integer> lines = new LinkedHashMap<>();

    private SpecReader(String fileName, List<String> required) {
        faults = new Faults(fileName);
        this.required = required;
    }

    /**
     * Reads a file in UTF-8 or UTF-16.
     *
     * @throws UserFault with every finding, each with its line and cell
     */
    public static Spec read(Path file) {
        return new SpecReader(file.toString(), Vocabulary.required()).spec(SpecText.of(file));
    }

    /**
     * Reads a file that may leave the converter open.
     *
     * @throws UserFault with every finding, each with its line and cell
     */
    public static Spec readLamp(Path file) {
        return new SpecReader(file.toString(), Vocabulary.requiredOfLamp()).spec(SpecText.of(file));
    }

    /**
     * Reads a table under the name that its findings shall bear.
     *
     * @throws UserFault with every finding, each with its line and cell
     */
    public static Spec read(Reader table, String fileName) {
        return new SpecReader(fileName, Vocabulary.required()).spec(SpecText.of(table, fileName));
    }

    private Spec spec(String text) {
        SpecTable table = new SpecTable(text, faults);
        RowReader reader = new RowReader(table.decimalMark(), faults);
        List<SpecRow> rows = table.rows().stream()
                .flatMap(row -> entry(row).flatMap(entry -> reader.read(row, entry)).stream())
                .toList();
        if (table.readable()) {
            required.stream().filter(this::isMissing).forEach(this::addMissing);
        }
        faults.throwIfAny();
        return Spec.of(rows);
    }

    /** The content of the row, or nothing when its name is unknown or occurred before. */
    private Optional<Entry> entry(TableRow row) {
        String name = row.cell(Column.QUANTITY).toLowerCase(Locale.ROOT);
        Optional<Entry> entry = Vocabulary.find(name);
        Integer before = lines.putIfAbsent(name, row.line());
        if (entry.isEmpty()) {
            faults.add(row.line(), unknownName(row));
        } else if (before != null) {
            String what = name + " stands twice, before on line " + before;
            String where = faults.place(row.line(), Column.QUANTITY);
            faults.add(row.line(), Finding.of(what, where, "keep one of the two rows"));
        }
        return before == null ? entry : Optional.empty();
    }

    private Finding unknownName(TableRow row) {
        String name = row.cell(Column.QUANTITY);
        String where = faults.place(row.line(), Column.QUANTITY);
        if (name.isEmpty()) {
            return Finding.of("this row has no name", where, "name the quantity, or begin a remark with #");
        }
        String next = NearestName.question(name, Vocabulary.names());
        return new Finding("this name is not known", where, name, neighbours(name), next);
    }

    /** The names of the same group, or the groups when there is no such group. */
    private static String neighbours(String name) {
        String group = name.toLowerCase(Locale.ROOT).split("\\.", 2)[0] + ".";
        String names = Vocabulary.names().stream()
                .filter(other -> other.startsWith(group))
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "names of the groups " + String.join(", ", Vocabulary.groups()) : names;
    }

    private boolean isMissing(String name) {
        return !lines.containsKey(name)
                && Vocabulary.standIn(name).filter(lines::containsKey).isEmpty();
    }

    private void addMissing(String name) {
        Entry entry = Vocabulary.find(name).orElseThrow();
        String next = "add a row for the " + entry.meaning();
        faults.addForTable(new Finding(name + " is missing", faults.file(), "", entry.allowed(), next));
    }
}
