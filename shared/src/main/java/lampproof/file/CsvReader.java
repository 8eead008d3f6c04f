package lampproof.file;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/**
 * Reads small tables of comma-separated text, UTF-8, whose columns are known. Blank lines and comments are left out.
 *
 * @param kind what such a table is called
 * @param header its columns
 * @param next the next step for a file of another kind
 */
public record CsvReader(String kind, List<String> header, String next) {

    private static final long LIMIT = 1 << 20;

    /**
     * A row below the header.
     *
     * @param place its place
     * @param cells one cell a column
     */
    public record Row(String place, List<String> cells) {

        /** The cell of a column, counted from 0. */
        public String cell(int column) {
            return cells.get(column);
        }
    }

    /** Copies the columns. */
    public CsvReader {
        header = List.copyOf(header);
    }

    /**
     * The text of a file.
     *
     * @throws UserFault when it cannot be read, is larger than 1 MiB, or is no text
     */
    public String text(Path file) {
        try {
            if (Files.size(file) > LIMIT) {
                throw fault("the file is larger than 1 MiB", file.toString());
            }
            return Files.readString(file);
        } catch (NoSuchFileException e) {
            throw fault("the file does not exist", file.toString());
        } catch (MalformedInputException e) {
            throw fault("invalid UTF-8 text", file.toString());
        } catch (IOException e) {
            throw fault("the file cannot be read", file.toString());
        }
    }

    /**
     * Reads the rows of a table, from the first to the last.
     *
     * @param text the table
     * @param file its name, for messages
     * @param findings receives the findings for rows without a cell for each column
     * @param reader receives each other row
     * @throws UserFault when the text has another header
     */
    public void rows(String text, String file, List<Finding> findings, Consumer<Row> reader) {
        List<String> lines =
                text.lines().filter(line -> !CsvLine.isComment(line, ',')).toList();
        if (lines.isEmpty() || !CsvLine.cells(lines.get(0), ',').equals(Optional.of(header))) {
            throw UserFault.badInput(new Finding("not a " + kind, file, "", String.join(",", header), next));
        }
        for (int line = 1; line < lines.size(); line++) {
            row(lines.get(line), file + ", row " + (line + 1), findings).ifPresent(reader);
        }
    }

    private Optional<Row> row(String line, String place, List<Finding> findings) {
        Optional<List<String>> cells = CsvLine.cells(line, ',');
        if (cells.isEmpty()) {
            findings.add(new Finding("the quotes do not match", place, line, "", "close every quote"));
        } else if (cells.get().size() != header.size()) {
            String found = String.valueOf(cells.get().size());
            findings.add(new Finding("a row has " + header.size() + " cells", place, found, "", ""));
        }
        return cells.filter(row -> row.size() == header.size()).map(row -> new Row(place, row));
    }

    private UserFault fault(String what, String where) {
        return UserFault.badInput(Finding.of(what, where, next));
    }
}
