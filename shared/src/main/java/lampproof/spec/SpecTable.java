package lampproof.spec;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.file.CsvLine;

/**
 * Cuts the text of a spec into rows of cells.
 *
 * <p>Each line is cut by itself, because a row of a spec never goes over two lines: so a quote that is never closed affects
 * one line and not the rest of the table.
 */
final class SpecTable {

    private static final int MOST_LINES = 10_000;
    private static final int LONGEST_CELL = 100;

    private final Faults faults;
    private final SpecHeader header;
    private final List<TableRow> rows = new ArrayList<>();
    private boolean readable = true;

    SpecTable(String text, Faults faults) {
        this.faults = faults;
        List<String> lines = text.lines().limit(MOST_LINES + 1).toList();
        if (lines.size() > MOST_LINES) {
            throw UserFault.badInput(
                    Finding.of("the table has more than 10000 lines", faults.file(), "check the name of the spec"));
        }
        header = SpecHeader.find(lines, faults);
        for (int line = header.line() + 1; line <= lines.size(); line++) {
            cut(line, lines.get(line - 1));
        }
    }

    /** The rows below the header, without blank lines, comments and lines that have no clean cells. */
    List<TableRow> rows() {
        return rows;
    }

    /** Whether every line had clean cells. */
    boolean readable() {
        return readable;
    }

    /** The decimal mark that the separator and the numbers settle. */
    DecimalMark decimalMark() {
        List<String> values = rows.stream()
                .flatMap(row -> Column.VALUES.stream().map(row::cell))
                .toList();
        return DecimalMark.of(header.separator(), values);
    }

    private void cut(int line, String text) {
        if (CsvLine.isComment(text, header.separator())) {
            return;
        }
        Optional<List<String>> cells = CsvLine.cells(text, header.separator());
        if (cells.isEmpty()) {
            String next = "close every quote, and double a quote inside a quoted cell";
            refuse(line, Finding.of("the quotes do not match", faults.place(line), next));
        } else if (fits(line, cells.get())) {
            add(new TableRow(line, byColumn(cells.get())));
        }
    }

    private boolean fits(int line, List<String> cells) {
        Optional<Finding> shifted = ShiftedCells.finding(header, cells, faults.place(line));
        if (shifted.isPresent()) {
            refuse(line, shifted.get());
            return false;
        }
        int columns = header.columns().size();
        boolean fits = cells.stream().skip(columns).allMatch(String::isEmpty);
        if (!fits) {
            String what = "the row has " + cells.size() + " cells, the header " + columns;
            String next = "put quotes around a note that contains the separator";
            refuse(line, Finding.of(what, faults.place(line), next));
        }
        return fits;
    }

    private Map<Column, String> byColumn(List<String> cells) {
        Map<Column, String> row = new EnumMap<>(Column.class);
        for (int index = 0; index < Math.min(cells.size(), header.columns().size()); index++) {
            row.put(header.columns().get(index), cells.get(index));
        }
        return row;
    }

    private void add(TableRow row) {
        List<Finding> findings = row.cells().entrySet().stream()
                .flatMap(cell -> unclean(row.line(), cell.getKey(), cell.getValue()).stream())
                .toList();
        findings.forEach(finding -> refuse(row.line(), finding));
        if (findings.isEmpty()) {
            rows.add(row);
        }
    }

    private Optional<Finding> unclean(int line, Column column, String cell) {
        String where = faults.place(line, column);
        if (column != Column.NOTE && cell.length() > LONGEST_CELL) {
            return Optional.of(Finding.of("the cell has more than 100 characters", where, "shorten it"));
        }
        return cell.codePoints()
                .filter(SpecTable::isInvisible)
                .mapToObj(code -> String.format(Locale.ROOT, "U+%04X", code))
                .findFirst()
                .map(code -> new Finding("an invisible character", where, code, "", "delete it"));
    }

    private void refuse(int line, Finding finding) {
        faults.add(line, finding);
        readable = false;
    }

    /** Control characters, marks that turn or join text, damaged and private characters. */
    private static boolean isInvisible(int code) {
        return switch (Character.getType(code)) {
            case Character.CONTROL -> code != '\t';
            case Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> true;
            default -> code == 0xfffd;
        };
    }
}
