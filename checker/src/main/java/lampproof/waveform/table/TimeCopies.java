package lampproof.waveform.table;

import java.util.List;
import java.util.stream.IntStream;

/** The columns of a table without names that repeat its time column, one in front of each signal. */
final class TimeCopies {

    /** Largest change of a distance by rounding in print, relative to the length [-]. */
    private static final double ROUNDING = 1e-6;

    private final NumberBlock block;
    private final int time;
    private final List<Integer> others;

    /**
     * Prepares to compare every second column with the time.
     *
     * @param used the columns that are not empty, the time first
     */
    TimeCopies(NumberBlock block, int[] used) {
        this.block = block;
        time = used[0];
        boolean pairs = used.length % 2 == 0 && used.length >= 4;
        others = IntStream.iterate(2, i -> pairs && i < used.length, i -> i + 2)
                .mapToObj(i -> used[i])
                .toList();
    }

    /**
     * The copies; none if the table has its time once only.
     *
     * @param names requested names; empty if none were requested
     * @throws lampproof.fault.UserFault when the copies differ
     */
    List<Integer> refuseMixed(List<String> names, TableFaults faults) {
        boolean asked = names.size() > 1 && others.size() + 1 == names.size();
        if (others.isEmpty() || (!names.isEmpty() && !asked)) {
            return List.of();
        }
        long same = others.stream()
                .filter(c -> block.rows().stream().allMatch(r -> same(r, c)))
                .count();
        boolean look = others.stream().allMatch(this::likeTime);
        if (same < others.size() && (asked || same > 0 || look)) {
            throw faults.copiesDiffer("line " + firstDifference());
        }
        return same == others.size() ? others : List.of();
    }

    /** Whether a cell holds the time of its row, however it is written. */
    private boolean same(List<String> row, int column) {
        return row.get(column).equals(row.get(time))
                || NumberBlock.number(row.get(column)) == NumberBlock.number(row.get(time));
    }

    /** Whether a column begins and rises as the time does, or runs beside it at one distance. */
    private boolean likeTime(int column) {
        List<List<String>> rows = block.rows();
        boolean moves = rows.size() > 2
                && block.rising(column)
                && !rows.get(0).get(column).equals(rows.get(rows.size() - 1).get(column));
        return moves && (same(rows.get(0), column) || beside(rows, column));
    }

    private boolean beside(List<List<String>> rows, int column) {
        double first = distance(rows.get(0), column);
        double length = NumberBlock.number(rows.get(rows.size() - 1).get(time))
                - NumberBlock.number(rows.get(0).get(time));
        return rows.stream().allMatch(row -> Math.abs(distance(row, column) - first) <= ROUNDING * length);
    }

    private double distance(List<String> row, int column) {
        return NumberBlock.number(row.get(column)) - NumberBlock.number(row.get(time));
    }

    private int firstDifference() {
        return block.lines().stream()
                .skip(block.first())
                .filter(line -> differs(Cells.of(line.text(), block.delimiter())))
                .mapToInt(HeadLine::number)
                .findFirst()
                .orElse(0);
    }

    private boolean differs(List<String> cells) {
        return cells.size() == block.columns() && others.stream().anyMatch(c -> !same(cells, c));
    }
}
