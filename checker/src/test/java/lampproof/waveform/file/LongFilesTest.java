package lampproof.waveform.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lampproof.waveform.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are longer than what is looked at to recognise them. */
class LongFilesTest {

    private static final int ROWS = 50_000;

    @TempDir
    Path folder;

    @Test
    void eachPassOverATextTableYieldsTheSameRows() throws IOException {
        WaveformFile file = WaveformFile.open(Files.writeString(folder.resolve("long.csv"), text()));
        List<double[]> first = rows(file, "v", "i");
        assertThat(first).hasSize(ROWS).last().isEqualTo(new double[] {ROWS - 1, 2.0 * (ROWS - 1), -(ROWS - 1)});
        assertThat(rows(file, "v", "i")).containsExactly(first.toArray(double[][]::new));
        assertThat(rows(file, "i")).hasSize(ROWS).last().isEqualTo(new double[] {ROWS - 1, -(ROWS - 1)});
        assertThat(rows(file, "v", "i")).containsExactly(first.toArray(double[][]::new));
    }

    @Test
    void theEndsOfALongFileTellItsSpan() throws IOException {
        Span span = new Span(0, ROWS - 1);
        assertThat(WaveformFile.open(Files.writeString(folder.resolve("long.csv"), text()))
                        .span())
                .isEqualTo(span);
        WaveformFile raw = WaveformFile.open(Files.write(folder.resolve("long.raw"), raw(ROWS)));
        assertThat(raw.span()).isEqualTo(span);
        assertThat(raw.rows(List.of("v"), block -> {}).span()).isEqualTo(span);
    }

    @Test
    void rowsBehindThosePromisedAreAFault() throws IOException {
        WaveformFile raw = WaveformFile.open(Files.write(folder.resolve("long.raw"), raw(ROWS - 10)));
        assertThatThrownBy(() -> raw.rows(List.of("v"), block -> {}))
                .hasMessage("long.raw: behind the points that the head promises stands more, and no other plot;"
                        + " run it again");
    }

    /** One bad number among thousands of rows that are taken together. */
    @Test
    void aFaultDeepInALongFileIsNamedByItsRow() throws IOException {
        int row = 6001;
        byte[] bytes = raw(ROWS);
        int place = bytes.length - (ROWS - row + 1) * 16;
        for (double bad : new double[] {Double.NaN, Double.NEGATIVE_INFINITY, row - 3.5}) {
            byte[] damaged = bytes.clone();
            ByteBuffer.wrap(damaged).order(ByteOrder.LITTLE_ENDIAN).putDouble(place, bad);
            assertNamesRow(row, damaged);
        }
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putDouble(place + 8, Double.POSITIVE_INFINITY);
        assertNamesRow(row, bytes);
    }

    private void assertNamesRow(int row, byte[] bytes) throws IOException {
        WaveformFile raw = WaveformFile.open(Files.write(folder.resolve("long.raw"), bytes));
        assertThatThrownBy(() -> raw.rows(List.of("v"), block -> {})).hasMessageContaining("row " + row + ":");
    }

    private static String text() {
        StringBuilder text = new StringBuilder("time,v,i\n");
        for (int k = 0; k < ROWS; k++) {
            text.append(k).append(',').append(2 * k).append(",-").append(k).append('\n');
        }
        return text.toString();
    }

    private static byte[] raw(int promised) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(("Title: x\nPlotname: Transient Analysis\nFlags: real\nNo. Variables: 2\nNo. Points: " + promised
                        + "\nVariables:\n\t0\ttime\ttime\n\t1\tv\tvoltage\nBinary:\n")
                .getBytes(StandardCharsets.US_ASCII));
        ByteBuffer values = ByteBuffer.allocate(ROWS * 16).order(ByteOrder.LITTLE_ENDIAN);
        for (int k = 0; k < ROWS; k++) {
            values.putDouble(k).putDouble(2 * k);
        }
        bytes.write(values.array());
        return bytes.toByteArray();
    }

    private static List<double[]> rows(WaveformFile file, String... names) {
        List<double[]> rows = new ArrayList<>();
        file.rows(List.of(names), Recorded.sink(rows));
        return rows;
    }
}
