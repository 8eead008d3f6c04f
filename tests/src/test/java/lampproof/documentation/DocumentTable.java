package lampproof.documentation;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A table of a document that is compared with the program; a comment {@code <!-- table: NAME -->} stands above it.
 *
 * @param document the document
 * @param from index of its first row below the heading
 * @param to index of the line after its last row
 */
record DocumentTable(Document document, int from, int to) {

    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    /** The table of that name. */
    static DocumentTable named(Document document, String name) {
        int above = document.lines().indexOf("<!-- table: " + name + " -->");
        if (above < 0) {
            throw new IllegalArgumentException(document.name() + " has no table marked " + name);
        }
        int end = above + 1;
        while (end < document.lines().size() && document.lines().get(end).startsWith("|")) {
            end++;
        }
        return new DocumentTable(document, above + 3, end);
    }

    /** The cells of each row. */
    List<List<String>> rows() {
        return document.lines().subList(from, to).stream()
                .map(line -> Arrays.stream(line.split("(?<!\\\\)\\|", -1))
                        .map(cell -> cell.strip().replace("\\|", "|"))
                        .toList())
                .map(cells -> cells.subList(1, cells.size() - 1))
                .toList();
    }

    /** Every text in code letters of the first column. */
    List<String> names() {
        return rows().stream()
                .flatMap(row -> CODE.matcher(row.get(0)).results())
                .map(match -> match.group(1))
                .toList();
    }

    /** The document with other rows in this table. */
    Document with(List<List<String>> rows) {
        return document.with(
                from,
                to,
                rows.stream().map(row -> "| " + String.join(" | ", row) + " |").toList());
    }
}
