package lampproof.file;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/**
 * Reads small tables of comma-separated text, UTF-8, whose columns are known. Blank lines and comments are left out; a cell in
 * quotes may go on over several lines.
 *
 * @param kind what such a table is called
 * @param header its columns
 * @param next the next step for a file of another kind
 */
public record CsvReader(String kind, List<String> header, String next) {

    private static final long LIMIT = 1 << 20;
    private static final Pattern LINE = Pattern.compile("([^\\r\\n]*+)(?:\\r\\n|\\r|\\n|\\z)");

    /**
     * A line of the text.
     *
     * @param index its index, from 0 [-]
     * @param text the whole text
     * @param start where the line begins in it [-]
     * @param content the line without its line end
     */
    private record Line(int index, String text, int start, String content) {

        boolean isComment() {
            return CsvLine.isComment(content, ',');
        }

        /** The row that begins here, with further lines where quotes are open at the end of this one. */
        Optional<CsvLine.Whole> read() {
            return CsvLine.at(0, content, ',').or(() -> CsvLine.at(start, text, ','));
        }
    }

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
        List<Line> lines = lines(text);
        Optional<Line> first = lines.stream().filter(line -> !line.isComment()).findFirst();
        if (first.flatMap(Line::read)
                .filter(head -> head.cells().equals(header))
                .isEmpty()) {
            throw UserFault.badInput(new Finding("not a " + kind, file, "", String.join(",", header), next));
        }
        int at = first.orElseThrow().index() + 1;
        while (at < lines.size()) {
            at += row(lines.get(at), file, findings, reader);
        }
    }

    /** Reads the row that begins on a line, and returns the lines that it takes. */
    private int row(Line line, String file, List<Finding> findings, Consumer<Row> reader) {
        if (line.isComment()) {
            return 1;
        }
        String place = file + ", line " + (line.index() + 1);
        Optional<CsvLine.Whole> row = line.read();
        if (row.isEmpty()) {
            findings.add(new Finding("the quotes do not match", place, line.content(), "", "close every quote"));
            return 1;
        }
        List<String> cells = row.get().cells();
        if (cells.size() == header.size()) {
            reader.accept(new Row(place, cells));
        } else {
            String found = String.valueOf(cells.size());
            findings.add(new Finding("a row has " + header.size() + " cells", place, found, "", ""));
        }
        return row.get().lines();
    }

    private static List<Line> lines(String text) {
        List<Line> lines = new ArrayList<>();
        Matcher line = LINE.matcher(text);
        while (line.find()) {
            lines.add(new Line(lines.size(), text, line.start(), line.group(1)));
        }
        return lines;
    }

    private UserFault fault(String what, String where) {
        return UserFault.badInput(Finding.of(what, where, next));
    }
}
