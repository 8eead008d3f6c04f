package lampproof.spec;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.file.CsvLine;

/**
 * The header line of a spec table.
 *
 * @param line its line number
 * @param separator the separator between the cells
 * @param columns the columns, in the order of the table
 */
record SpecHeader(int line, char separator, List<Column> columns) {

    private static final String WANTED =
            Column.NEEDED.stream().map(Column::word).collect(Collectors.joining(","));
    private static final int SHOWN = 80;

    /**
     * Reads the first line that is not blank or a comment, cut by the separator that yields the most known columns.
     *
     * @throws UserFault when there is no such line, or a column is missing, twice or not known
     */
    static SpecHeader find(List<String> lines, Faults faults) {
        for (int line = 1; line <= lines.size(); line++) {
            if (!CsvLine.isComment(lines.get(line - 1), ',')) {
                return of(line, lines.get(line - 1), faults);
            }
        }
        throw UserFault.badInput(Finding.of("the table is empty", faults.file(), "begin it with the line " + WANTED));
    }

    private static SpecHeader of(int line, String text, Faults faults) {
        char separator = Stream.of(',', ';', '\t')
                .max(Comparator.comparingInt(mark -> columns(names(text, mark)).size()))
                .orElseThrow();
        List<String> names = names(text, separator);
        if (columns(names).size() < 2) {
            String found = text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text;
            throw UserFault.badInput(new Finding("invalid header line", faults.place(line), found, WANTED, ""));
        }
        check(line, names, faults);
        return new SpecHeader(line, separator, columns(names));
    }

    private static List<Column> columns(List<String> names) {
        return names.stream().map(Column::of).flatMap(Optional::stream).toList();
    }

    /** The names, without the empty cells that spreadsheets add at the end. */
    private static List<String> names(String line, char separator) {
        List<String> names = new ArrayList<>(CsvLine.cells(line, separator).orElse(List.of()));
        while (!names.isEmpty() && names.get(names.size() - 1).isEmpty()) {
            names.remove(names.size() - 1);
        }
        return names;
    }

    private static void check(int line, List<String> names, Faults faults) {
        for (String name : names) {
            if (Column.of(name).isEmpty()) {
                faults.add(line, unknown(name, faults.place(line)));
            }
        }
        for (Column column : Column.values()) {
            long count = columns(names).stream().filter(column::equals).count();
            if (count > 1) {
                faults.add(line, Finding.of("column " + column.word() + " is there twice", faults.place(line), ""));
            } else if (count == 0 && Column.NEEDED.contains(column)) {
                faults.add(line, Finding.of("column " + column.word() + " is missing", faults.place(line), ""));
            }
        }
        faults.throwIfAny();
    }

    private static Finding unknown(String name, String where) {
        String next = NearestName.question(name, Keyword.words(Column.class), "put remarks into the note");
        return new Finding("unknown column", where, name, WANTED, next);
    }
}
