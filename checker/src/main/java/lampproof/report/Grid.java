package lampproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Rows of cells in aligned columns; numbers are right-aligned. */
final class Grid {

    private record Row(List<String> cells, UnaryOperator<String> paint) {}

    private final List<Row> rows = new ArrayList<>();
    private final String alignment;

    /**
     * An empty grid.
     *
     * @param alignment a letter for each column: l or r
     */
    Grid(String alignment) {
        this.alignment = alignment;
    }

    Grid add(List<String> cells) {
        return add(cells, UnaryOperator.identity());
    }

    /** Adds a row that is painted as a whole. */
    Grid add(List<String> cells, UnaryOperator<String> paint) {
        rows.add(new Row(List.copyOf(cells), paint));
        return this;
    }

    String text() {
        return rows.stream().map(row -> row.paint().apply(line(row)) + "\n").collect(Collectors.joining());
    }

    private String line(Row row) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < alignment.length(); column++) {
            String cell = row.cells().get(column);
            String blanks = " ".repeat(width(column) - cell.length());
            line.append("  ").append(alignment.charAt(column) == 'r' ? blanks + cell : cell + blanks);
        }
        return line.toString().stripTrailing();
    }

    private int width(int column) {
        return rows.stream()
                .mapToInt(row -> row.cells().get(column).length())
                .max()
                .orElse(0);
    }
}
