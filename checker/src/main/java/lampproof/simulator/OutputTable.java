package lampproof.simulator;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The two ends of a table that the simulator wrote: blanks between the fields, names on the first line, time in the
 * first column.
 *
 * <p>With a full disk ngspice silently ends with status 0, and the table is cut within a row; only its last row shows
 * it.
 *
 * @param fault what is wrong with the form of the table, empty if the table is complete
 * @param lastTime the time of the last row [s], empty when there is none
 */
record OutputTable(Optional<String> fault, OptionalDouble lastTime) {

    private static final int LONGEST_LINE = 1 << 16;

    /**
     * Reads both ends of a table.
     *
     * @throws IOException if it cannot be read
     */
    static OutputTable read(Path file) throws IOException {
        try (RandomAccessFile table = new RandomAccessFile(file.toFile(), "r")) {
            String head = text(table, 0);
            String tail = text(table, Math.max(0, table.length() - LONGEST_LINE));
            return of(head, tail);
        }
    }

    private static String text(RandomAccessFile table, long from) throws IOException {
        byte[] bytes = new byte[(int) Math.min(LONGEST_LINE, table.length() - from)];
        table.seek(from);
        table.readFully(bytes);
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static OutputTable of(String head, String tail) {
        List<String> names = fields(head.lines().findFirst().orElse(""));
        List<String> rows = tail.lines().filter(line -> !line.isBlank()).toList();
        if (names.isEmpty()) {
            return faulty("the table is empty");
        }
        if (!names.get(0).equalsIgnoreCase("time")) {
            return faulty("the first column of the table is " + names.get(0) + ", not time");
        }
        if (rows.isEmpty() || fields(rows.get(rows.size() - 1)).equals(names)) {
            return faulty("the table has no rows");
        }
        return ofLastRow(names.size(), fields(rows.get(rows.size() - 1)), tail.endsWith("\n"));
    }

    private static OutputTable ofLastRow(int columns, List<String> row, boolean ended) {
        if (row.size() != columns) {
            return faulty("the last row of the table is cut: it has " + row.size() + " of " + columns
                    + " fields, is the disk full?");
        }
        if (!ended) {
            return faulty("the last row of the table is cut: its line does not end, is the disk full?");
        }
        List<String> bad = row.stream().filter(field -> !isFinite(field)).toList();
        return bad.isEmpty()
                ? new OutputTable(Optional.empty(), OptionalDouble.of(Double.parseDouble(row.get(0))))
                : faulty("the last row of the table holds " + bad.get(0) + ", which is not a finite number");
    }

    private static OutputTable faulty(String fault) {
        return new OutputTable(Optional.of(fault), OptionalDouble.empty());
    }

    private static List<String> fields(String line) {
        return Stream.of(line.strip().split("\\s+"))
                .filter(field -> !field.isEmpty())
                .toList();
    }

    private static boolean isFinite(String field) {
        try {
            return Double.isFinite(Double.parseDouble(field));
        } catch (NumberFormatException e) {
            return false;
        }
    }
}
