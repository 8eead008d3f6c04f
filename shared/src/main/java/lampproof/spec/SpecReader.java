package lampproof.spec;

import java.io.Reader;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/**
 * Reads a spec table: {@code quantity,min,typ,max,unit,note}, one row a quantity or a choice.
 *
 * <p>Columns may be in any order, separated by comma, semicolon or tab. Upper and lower case are equal in names and differ in
 * units. All faults are collected and thrown as one.
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
     * Reads a file that need not name the converter.
     *
     * @throws UserFault with every finding, each with its line and cell
     */
    public static Spec readLamp(Path file) {
        return new SpecReader(file.toString(), Vocabulary.requiredOfLamp()).spec(SpecText.of(file));
    }

    /**
     * Reads a table; its findings name the given file.
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
            String what = name + " is given twice, first on line " + before;
            String where = faults.place(row.line(), Column.QUANTITY);
            faults.add(row.line(), Finding.of(what, where, "keep one of the two rows"));
        }
        return before == null ? entry : Optional.empty();
    }

    private Finding unknownName(TableRow row) {
        String name = row.cell(Column.QUANTITY);
        String where = faults.place(row.line(), Column.QUANTITY);
        if (name.isEmpty()) {
            return Finding.of("the row has no name", where, "name the quantity, or begin a remark with #");
        }
        return UnknownName.ofRow(name, where);
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
