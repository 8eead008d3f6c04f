package lampproof.waveform.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import lampproof.waveform.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The byte scanner and the general CSV reader give the same numbers, to the last bit. */
class TwoReadersTest {

    private static final int ROWS = 20_000;
    private static final int COLUMNS = 5;

    @TempDir
    Path folder;

    @Test
    void plainAndQuotedTablesAreTheSame() throws IOException {
        List<String[]> cells = cells();
        List<double[]> plain = rows(write("plain", cells, ",", c -> c));
        List<double[]> blanks = rows(write("blanks", cells, " ", c -> c));
        List<double[]> quoted = rows(write("quoted", cells, ",", c -> '"' + c + '"'));
        List<double[]> commas = rows(write("commas", cells, ";", c -> c.replace('.', ',')));
        assertThat(plain).hasSize(ROWS);
        assertThat(WaveformFile.open(folder.resolve("plain")).span())
                .isEqualTo(new Span(plain.get(0)[0], plain.get(ROWS - 1)[0]));
        for (int i = 0; i < ROWS; i++) {
            for (int column = 0; column < COLUMNS; column++) {
                double expected = Double.parseDouble(cells.get(i)[column]);
                assertThat(plain.get(i)[column]).isEqualTo(expected);
                assertThat(blanks.get(i)[column]).isEqualTo(expected);
                assertThat(quoted.get(i)[column]).isEqualTo(expected);
                assertThat(commas.get(i)[column]).isEqualTo(expected);
            }
        }
    }

    /** One irregular line deep inside a large file sends one block through the slow reader only. */
    @Test
    void irregularLinesInALargeTableLoseNothing() throws IOException {
        List<String[]> cells = cells();
        Path path = write("plain", cells, ",", c -> c);
        List<String> lines = new ArrayList<>(Files.readAllLines(path));
        lines.set(9_000, lines.get(9_000).replace(",", " , "));
        lines.set(9_001, "\"" + lines.get(9_001).replace(",", "\",\"") + "\"");
        lines.add(15_000, "");
        Files.write(path, lines);
        assertThat(rows(path)).hasSize(ROWS);
        lines.set(16_000, lines.get(16_000).replaceFirst(",", ",x"));
        Files.write(path, lines);
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> rows(path))
                .hasMessageStartingWith("plain, line 16001: 'x");
    }

    private List<double[]> rows(Path path) {
        return Recorded.rows(WaveformFile.open(path), "a", "b", "c", "d");
    }

    private Path write(
            String name, List<String[]> rows, String delimiter, java.util.function.UnaryOperator<String> form)
            throws IOException {
        List<String> lines = new ArrayList<>(List.of(String.join(delimiter, "time", "a", "b", "c", "d")));
        for (String[] row : rows) {
            lines.add(java.util.Arrays.stream(row).map(form).collect(Collectors.joining(delimiter)));
        }
        return Files.write(folder.resolve(name), lines);
    }

    /** Numbers of every length and size, the time rising. */
    private static List<String[]> cells() {
        Random random = new Random(7);
        List<String[]> rows = new ArrayList<>();
        double time = 0;
        for (int i = 0; i < ROWS; i++) {
            String[] row = new String[COLUMNS];
            time += random.nextInt(4) == 0 ? 0 : random.nextDouble() * 1e-6;
            row[0] = String.format(Locale.ROOT, "%.17e", time);
            for (int column = 1; column < COLUMNS; column++) {
                double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
                row[column] = String.format(Locale.ROOT, "%." + (1 + random.nextInt(17)) + "e", value);
            }
            rows.add(row);
        }
        return rows;
    }
}
