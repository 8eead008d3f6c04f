package lampproof.waveform;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Where the numbers of a table begin, and between which marks they stand.
 *
 * @param delimiter what stands between cells
 * @param first index of the first line of numbers among the lines
 * @param columns number of cells in that line
 * @param lines the first lines of the file
 */
record NumberBlock(char delimiter, int first, int columns, List<HeadLine> lines) {

    private static final List<Character> DELIMITERS = List.of('\t', ';', ',', Cells.BLANKS);
    private static final int ROWS = 1000;

    /** The block that begins earliest. */
    static Optional<NumberBlock> find(List<HeadLine> lines, boolean whole) {
        Optional<NumberBlock> best = Optional.empty();
        for (char delimiter : DELIMITERS) {
            OptionalInt start = IntStream.range(0, lines.size())
                    .filter(i -> begins(lines, i, delimiter, whole))
                    .findFirst();
            if (start.isPresent() && best.map(b -> start.getAsInt() < b.first).orElse(true)) {
                int columns =
                        Cells.of(lines.get(start.getAsInt()).text(), delimiter).size();
                best = Optional.of(new NumberBlock(delimiter, start.getAsInt(), columns, lines).withRowsAbove());
            }
        }
        return best;
    }

    /** The cells of the first rows, whole ones only. */
    List<List<String>> rows() {
        return lines.stream()
                .skip(first)
                .limit(ROWS)
                .map(line -> Cells.of(line.text(), delimiter))
                .filter(cells -> cells.size() == columns)
                .toList();
    }

    /** Whether a column holds anything. */
    boolean used(int column) {
        return rows().stream().anyMatch(cells -> !cells.get(column).isEmpty());
    }

    /** The last line above the numbers, or above another line, that is not blank. */
    Optional<HeadLine> above(int line) {
        return IntStream.iterate(line - 1, i -> i >= 0, i -> i - 1)
                .mapToObj(lines::get)
                .filter(l -> !l.blank())
                .findFirst();
    }

    /** Whether every cell of a line is a number or empty, and at least two are numbers. */
    static boolean numeric(String line, char delimiter) {
        List<String> cells = Cells.of(line, delimiter);
        boolean quoted = line.indexOf('"') >= 0;
        return cells.stream().filter(c -> !c.isEmpty()).count() >= 2
                && cells.stream().allMatch(c -> c.isEmpty() || number(c, delimiter, quoted));
    }

    private static boolean number(String cell, char delimiter, boolean quoted) {
        if (NumberText.notFinite(cell) || is(cell, NumberText.POINT)) {
            return true;
        }
        return delimiter == Cells.BLANKS
                ? is(cell, NumberText.SUFFIXED)
                : (quoted || delimiter != ',') && (is(cell, NumberText.COMMA) || is(cell, NumberText.GROUPED_POINT));
    }

    private static boolean is(String cell, NumberText form) {
        return !Double.isNaN(form.value(cell));
    }

    private static boolean begins(List<HeadLine> lines, int index, char delimiter, boolean whole) {
        String line = lines.get(index).text();
        if (!numeric(line, delimiter)) {
            return false;
        }
        Optional<HeadLine> next =
                lines.stream().skip(index + 1L).filter(l -> !l.blank()).findFirst();
        int columns = Cells.of(line, delimiter).size();
        return next.map(l -> follows(l.text(), columns, delimiter)
                        || (whole && l.number() == lines.size())
                        || TableLayout.trailer(l.text()))
                .orElse(true);
    }

    private static boolean follows(String line, int columns, char delimiter) {
        return numeric(line, delimiter) && Cells.of(line, delimiter).size() == columns;
    }

    /** Some oscilloscopes write their settings beside the first rows; those rows count too. */
    private NumberBlock withRowsAbove() {
        List<Integer> used =
                IntStream.range(0, columns).filter(this::used).boxed().toList();
        int start = first;
        while (start > 0
                && used.size() < columns
                && besideSettings(lines.get(start - 1).text(), used)) {
            start--;
        }
        return new NumberBlock(delimiter, start, columns, lines);
    }

    private boolean besideSettings(String line, List<Integer> used) {
        List<String> cells = Cells.of(line, delimiter);
        return cells.size() == columns && used.stream().allMatch(c -> number(cells.get(c), delimiter, false));
    }
}
