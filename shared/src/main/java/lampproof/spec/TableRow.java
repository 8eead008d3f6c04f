package lampproof.spec;

import java.util.Map;

/** One line of a spec table, cut into trimmed cells. */
record TableRow(int line, Map<Column, String> cells) {

    /** The text of a cell; empty when the line has none there. */
    String cell(Column column) {
        return cells.getOrDefault(column, "");
    }
}
