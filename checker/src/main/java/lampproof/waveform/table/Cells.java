package lampproof.waveform.table;

import java.util.ArrayList;
import java.util.List;

/** Cuts a line of a table into cells. */
final class Cells {

    /** The delimiter for any run of blanks and tabs. */
    static final char BLANKS = ' ';

    private Cells() {}

    /** The cells of a line of numbers, without blanks around them and without quotes. */
    static List<String> of(String line, char delimiter) {
        return split(line, delimiter, false);
    }

    /** The names of a header line; a delimiter inside brackets belongs to the name. */
    static List<String> names(String line, char delimiter) {
        return split(line, delimiter, true);
    }

    /** Whether every bracket of a name is closed. */
    static boolean bracketsClose(String name) {
        return name.chars().map(c -> depthChange((char) c)).sum() == 0;
    }

    private static List<String> split(String line, char delimiter, boolean brackets) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        int depth = 0;
        for (char c : (delimiter == BLANKS ? line.strip() : line).toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && depth <= 0 && parts(c, delimiter)) {
                close(cells, cell, delimiter);
            } else {
                depth += brackets ? depthChange(c) : 0;
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }

    private static boolean parts(char c, char delimiter) {
        return delimiter == BLANKS ? c == ' ' || c == '\t' : c == delimiter;
    }

    private static void close(List<String> cells, StringBuilder cell, char delimiter) {
        if (delimiter != BLANKS || !cell.isEmpty()) {
            cells.add(cell.toString().strip());
        }
        cell.setLength(0);
    }

    private static int depthChange(char c) {
        return switch (c) {
            case '(', '[', '{' -> 1;
            case ')', ']', '}' -> -1;
            default -> 0;
        };
    }
}
