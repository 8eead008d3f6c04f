package lampproof.waveform.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampproof.waveform.NumberNotation;

/**
 * Where the numbers of a table begin, and how they are delimited.
 *
 * @param delimiter the delimiter of cells
 * @param first index of the first line of numbers among the lines
 * @param columns number of cells in that line
 * @param filled columns that are not empty
 * @param lines the first lines of the file
 */
record NumberBlock(char delimiter, int first, int columns, Set<Integer> filled, List<HeadLine> lines) {

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
                best = Optional.of(at(lines, start.getAsInt(), delimiter));
            }
        }
        return best.map(NumberBlock::withRowsAbove);
    }

    private static NumberBlock at(List<HeadLine> lines, int start, char delimiter) {
        int columns = Cells.of(lines.get(start).text(), delimiter).size();
        List<List<String>> rows = new NumberBlock(delimiter, start, columns, Set.of(), lines).rows();
        Set<Integer> filled = IntStream.range(0, columns)
                .filter(c -> rows.stream().anyMatch(cells -> !cells.get(c).isEmpty()))
                .boxed()
                .collect(Collectors.toUnmodifiableSet());
        return new NumberBlock(delimiter, start, columns, filled, lines);
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

    /** Whether a column is not empty. */
    boolean used(int column) {
        return filled.contains(column);
    }

    /** Whether the numbers of a column never fall. */
    boolean rising(int column) {
        double[] numbers =
                rows().stream().mapToDouble(r -> number(r.get(column))).toArray();
        return IntStream.range(1, numbers.length).noneMatch(i -> numbers[i] < numbers[i - 1]);
    }

    /** Whether a column holds no number twice. */
    boolean different(int column) {
        List<List<String>> rows = rows();
        return rows.stream().map(r -> r.get(column)).distinct().count() == rows.size();
    }

    /** Whether a column numbers the rows: whole numbers, each larger than the one before. */
    boolean numbered(int column) {
        return different(column)
                && rising(column)
                && rows().stream().allMatch(r -> r.get(column).matches("\\d{1,15}"));
    }

    /** The number of a cell, whatever its decimal mark. */
    static double number(String cell) {
        return NumberNotation.POINT.value(cell.replace(',', '.'));
    }

    /** The last line above the numbers, or above another line, that is not blank. */
    Optional<HeadLine> above(int line) {
        return IntStream.iterate(line - 1, i -> i >= 0, i -> i - 1)
                .mapToObj(lines::get)
                .filter(l -> !l.blank())
                .findFirst();
    }

    /** The last line above the numbers that holds the names of all columns, a scale among them. */
    Optional<HeadLine> lastTitled() {
        return IntStream.iterate(first - 1, i -> i >= 0, i -> i - 1)
                .mapToObj(lines::get)
                .filter(this::titled)
                .findFirst();
    }

    /** The lines between one line and the numbers that are not blank. */
    List<HeadLine> between(HeadLine line) {
        return lines.subList(line.number(), first).stream()
                .filter(l -> !l.blank())
                .toList();
    }

    /** How many cells of a line are numbers. */
    int numbers(HeadLine line) {
        boolean quoted = line.text().indexOf('"') >= 0;
        return (int) Cells.of(line.text(), delimiter).stream()
                .filter(c -> number(c, delimiter, quoted))
                .count();
    }

    /** Whether every cell of a line is a number or empty, and at least two are numbers. */
    static boolean numeric(String line, char delimiter) {
        List<String> cells = Cells.of(line, delimiter);
        boolean quoted = line.indexOf('"') >= 0;
        return cells.stream().filter(c -> !c.isEmpty()).count() >= 2
                && cells.stream().allMatch(c -> c.isEmpty() || number(c, delimiter, quoted));
    }

    static boolean number(String cell, char delimiter, boolean quoted) {
        if (NumberNotation.notFinite(cell) || is(cell, NumberNotation.POINT)) {
            return true;
        }
        return delimiter == Cells.BLANKS
                ? is(cell, NumberNotation.SUFFIXED)
                : (quoted || delimiter != ',')
                        && (is(cell, NumberNotation.COMMA) || is(cell, NumberNotation.GROUPED_POINT));
    }

    private static boolean is(String cell, NumberNotation form) {
        return !Double.isNaN(form.value(cell));
    }

    private static boolean begins(List<HeadLine> lines, int index, char delimiter, boolean whole) {
        String line = lines.get(index).text();
        if (!numeric(line, delimiter)) {
            return false;
        }
        int columns = Cells.of(line, delimiter).size();
        Optional<HeadLine> next =
                lines.stream().skip(index + 1L).filter(l -> !l.blank()).findFirst();
        return titled(lines, index, delimiter, columns)
                || next.map(l -> follows(l.text(), columns, delimiter)
                                || (whole && l.number() == lines.size())
                                || TableLayout.trailer(l.text()))
                        .orElse(true);
    }

    /** Whether there is a line of names with a scale above a line. */
    private static boolean titled(List<HeadLine> lines, int index, char delimiter, int columns) {
        int above = index - 1;
        while (above >= 0 && lines.get(above).blank()) {
            above--;
        }
        return above >= 0 && new NumberBlock(delimiter, index, columns, Set.of(), lines).titled(lines.get(above));
    }

    /** Whether a line holds the names of all columns, a scale among them. */
    boolean titled(HeadLine line) {
        List<String> names = names(line);
        return names.size() == columns && names.stream().map(UnitLabel::of).anyMatch(UnitLabel::time);
    }

    /** The cells of a line as names; empty ones at its end are dropped or added to fit the columns. */
    List<String> names(HeadLine line) {
        String text = line.uncommented();
        List<String> names = new ArrayList<>(Cells.names(text, delimiter));
        if (delimiter == Cells.BLANKS && names.size() != columns) {
            List<String> wide = List.of(text.split("\\s{2,}|\\t", -1));
            names = wide.size() == columns ? new ArrayList<>(wide) : names;
        }
        while (names.size() > columns && names.get(names.size() - 1).isEmpty()) {
            names.remove(names.size() - 1);
        }
        int last = filled.stream().mapToInt(c -> c).max().orElse(columns);
        if (names.size() > 1 && names.size() > last && names.size() < columns) {
            names.addAll(Collections.nCopies(columns - names.size(), ""));
        }
        return names;
    }

    private static boolean follows(String line, int columns, char delimiter) {
        return numeric(line, delimiter) && Cells.of(line, delimiter).size() == columns;
    }

    /** Some oscilloscopes write their settings beside the first rows; those rows belong to the block. */
    private NumberBlock withRowsAbove() {
        int start = first;
        while (start > 0
                && filled.size() < columns
                && besideSettings(lines.get(start - 1).text())) {
            start--;
        }
        return new NumberBlock(delimiter, start, columns, filled, lines);
    }

    private boolean besideSettings(String line) {
        List<String> cells = Cells.of(line, delimiter);
        return cells.size() == columns && filled.stream().allMatch(c -> number(cells.get(c), delimiter, false));
    }
}
