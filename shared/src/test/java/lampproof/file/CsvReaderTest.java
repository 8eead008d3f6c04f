package lampproof.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.file.CsvReader.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CsvReaderTest {

    private static final CsvReader READER = new CsvReader("table of lamps", List.of("lamp", "power"), "name another");

    @TempDir
    private Path folder;

    private final List<Finding> findings = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    @Test
    void rowsAreReadInOrderWithTheirPlaces() {
        read("""
                # of the stairwell
                lamp, power

                "first, upper", 7
                second ,8
                """);
        assertThat(findings).isEmpty();
        assertThat(rows)
                .containsExactly(
                        new Row("lamps.csv, line 4", List.of("first, upper", "7")),
                        new Row("lamps.csv, line 5", List.of("second", "8")));
    }

    @Test
    void aRowWithOpenQuotesOrOtherCellsIsToldAndLeftOut() {
        read("lamp,power\n\"first,7\nsecond,8,9\nthird,3\n");
        assertThat(rows).extracting(Row::place).containsExactly("lamps.csv, line 4");
        assertThat(findings)
                .containsExactly(
                        new Finding(
                                "the quotes do not match", "lamps.csv, line 2", "\"first,7", "", "close every quote"),
                        new Finding("a row has 2 cells", "lamps.csv, line 3", "3", "", ""));
    }

    @Test
    void aCellInQuotesMayHoldLineEnds() {
        read("lamp,power\r\n\"two\r\nlines\",7\r\n\r\n\" \r\n\",8\n\"a\n\n\"\"b\"\"\",8\nlast,9");
        assertThat(findings).isEmpty();
        assertThat(rows)
                .containsExactly(
                        new Row("lamps.csv, line 2", List.of("two\r\nlines", "7")),
                        new Row("lamps.csv, line 5", List.of("", "8")),
                        new Row("lamps.csv, line 7", List.of("a\n\n\"b\"", "8")),
                        new Row("lamps.csv, line 10", List.of("last", "9")));
    }

    @Test
    void anotherHeaderIsRefused() {
        assertThatThrownBy(() -> read("lamp\n"))
                .isInstanceOf(UserFault.class)
                .hasMessage("lamps.csv: not a table of lamps, allowed: lamp,power; name another");
    }

    @Test
    void aFileThatCannotBeReadIsTold() throws IOException {
        Path file = folder.resolve("lamps.csv");
        assertThatThrownBy(() -> READER.text(file)).hasMessage(file + ": the file does not exist; name another");
        assertThatThrownBy(() -> READER.text(folder)).hasMessage(folder + ": the file cannot be read; name another");
        Files.write(file, "lämp".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> READER.text(file)).hasMessage(file + ": invalid UTF-8 text; name another");
        Files.write(file, new byte[(1 << 20) + 1]);
        assertThatThrownBy(() -> READER.text(file)).hasMessage(file + ": the file is larger than 1 MiB; name another");
    }

    private void read(String text) {
        READER.rows(text, "lamps.csv", findings, rows::add);
    }
}
