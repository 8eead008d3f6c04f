package lampproof.waveform.raw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import lampproof.fault.UserFault;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Remark;
import lampproof.waveform.file.Recorded;
import lampproof.waveform.file.WaveformFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RawFileTest {

    @TempDir
    Path folder;

    @Test
    void headThatWasNeverCompletedIsFlaggedAndItsRowsCounted() {
        for (String points : List.of("0", "", "        ")) {
            byte[] head = head("real", "6", points, "time a b c d e").getBytes(StandardCharsets.US_ASCII);
            ReadResult reading = read(join(head, doubles(6, 90)), "e");
            assertThat(reading.rows()).isEqualTo(90);
            assertThat(reading.remarks())
                    .containsExactly(Remark.defect(
                            "wave.raw: the head says 0 points, 90 rows are there: head not completed, run aborted"));
        }
    }

    @Test
    void partOfARowIsAFaultWhenTheHeadDoesNotKnowTheNumber() {
        byte[] head = head("real", "6", "0", "time a b c d e").getBytes(StandardCharsets.US_ASCII);
        byte[] torn = java.util.Arrays.copyOf(doubles(6, 90), 4321 - 8);
        assertThatThrownBy(() -> read(join(head, torn), "e"))
                .isInstanceOf(UserFault.class)
                .hasMessage("wave.raw: 4313 bytes of values are no whole number of rows of 48 bytes; run it again");
    }

    @Test
    void fileShorterThanItsHeadSaysIsIncomplete() {
        byte[] head = head("real", "3", "100", "time a b").getBytes(StandardCharsets.US_ASCII);
        ReadResult reading = read(join(head, doubles(3, 40)), "a");
        assertThat(reading.rows()).isEqualTo(40);
        assertThat(reading.remarks())
                .containsExactly(
                        Remark.defect("wave.raw: the head says 100 points, 40 rows are there: file incomplete"));
    }

    @Test
    void bytesBehindTheLastRowAreAFault() {
        byte[] head = head("real", "3", "5", "time a b").getBytes(StandardCharsets.US_ASCII);
        assertThatThrownBy(() -> read(join(head, doubles(3, 7)), "a")).isInstanceOf(UserFault.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"real", "real padded", "real unpadded", "REAL", " real  "})
    void flagsMayVary(String flags) {
        byte[] head = head(flags, "3", " 4  ", "time a b").getBytes(StandardCharsets.US_ASCII);
        assertThat(read(join(head, doubles(3, 4)), "v(b)").rows()).isEqualTo(4);
    }

    @Test
    void otherByteOrderIsSeen() {
        byte[] head = head("real", "3", "4", "time a b").getBytes(StandardCharsets.US_ASCII);
        ByteBuffer values = ByteBuffer.allocate(4 * 3 * 8).order(ByteOrder.BIG_ENDIAN);
        for (int row = 0; row < 4; row++) {
            values.putDouble(row * 1e-6).putDouble(row + 0.5).putDouble(-row);
        }
        WaveformFile file = open(join(head, values.array()));
        assertThat(Recorded.rows(file, "a", "b").get(3)).containsExactly(3 * 1e-6, 3.5, -3);
    }

    @Test
    void shortValuesAreSeenByTheLengthOfTheFile() {
        byte[] head = head("real", "3", "4", "time a b").getBytes(StandardCharsets.US_ASCII);
        WaveformFile file = open(join(head, mixed(4, false)));
        assertThat(file.format()).isEqualTo("SPICE raw file, binary, 4-byte values, 2 signals");
        assertThat(Recorded.rows(file, "a").get(3)).containsExactly(3 * 1e-6, 3.5);
    }

    @Test
    void shortValuesAreSeenByTheirTimesWhereTheLengthDoesNotTell() throws IOException {
        byte[] head = head("real", "3", "99", "time a b").getBytes(StandardCharsets.US_ASCII);
        byte[] unfinished = head("real", "3", "0", "time a b").getBytes(StandardCharsets.US_ASCII);
        for (ByteOrder order : List.of(ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN)) {
            ByteBuffer values = ByteBuffer.allocate(99 * 3 * 4).order(order);
            for (int row = 0; row < 99; row++) {
                values.putFloat(row * 5e-5f).putFloat(row + 0.5f).putFloat(-row);
            }
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (OutputStream gzip = new GZIPOutputStream(packed)) {
                gzip.write(join(head, values.array()));
            }
            for (byte[] file :
                    List.of(join(head, values.array()), packed.toByteArray(), join(unfinished, values.array()))) {
                List<double[]> rows = Recorded.rows(open(file), "a", "b");
                assertThat(rows).hasSize(99);
                assertThat(rows.get(98)).containsExactly(98 * 5e-5f, 98.5, -98);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {16_384, 12_288})
    void fileCutToTheLengthThatShorterValuesWouldHaveIsIncomplete(int length) {
        byte[] head = head("real", "3", "1024", "time a b").getBytes(StandardCharsets.US_ASCII);
        ReadResult reading = read(join(head, java.util.Arrays.copyOf(doubles(3, 1024), length)), "a");
        assertThat(reading.rows()).isEqualTo(length / 24);
        assertThat(reading.remarks())
                .containsExactly(Remark.defect(
                        "wave.raw: the head says 1024 points, " + length / 24 + " rows are there: file incomplete"));
    }

    @Test
    void headInTwoByteTextAndCompressionMarksOnTheTime() {
        Charset wide = StandardCharsets.UTF_16LE;
        byte[] head = head("real forward", "3", "4", "time V(a) I(L1)")
                .replace("\nVariables:", "\nOffset:   0.0\nVariables:")
                .getBytes(wide);
        WaveformFile file = open(join(head, mixed(4, true)));
        assertThat(Recorded.rows(file, "v(a)", "i(l1)").get(3)).containsExactly(3 * 1e-6, 3.5, -3);
    }

    @Test
    void complexPlotIsRefused() {
        byte[] head = head("complex", "2", "1", "frequency v(out)").getBytes(StandardCharsets.US_ASCII);
        assertThatThrownBy(() -> open(join(head, doubles(4, 1))))
                .hasMessage("wave.raw: the scale is frequency, not time; v(out) is complex;"
                        + " give the result of a transient analysis or a capture");
    }

    @Test
    void complexValuesOverTimeAreRefusedForWhatTheyAre() {
        byte[] head = head("complex", "2", "1", "time v(out)").getBytes(StandardCharsets.US_ASCII);
        assertThatThrownBy(() -> open(join(head, doubles(4, 1))))
                .hasMessage("wave.raw: its values are complex; give the result of a transient analysis or a capture");
    }

    @Test
    void otherPlotsBesideTheTransientOneAreLeftOut() {
        byte[] point = head("real", "2", "1", "a b").replace("time", "voltage").getBytes(StandardCharsets.US_ASCII);
        byte[] run = head("real", "3", "4", "time a b").getBytes(StandardCharsets.US_ASCII);
        byte[] file = join(join(point, doubles(2, 1)), join(run, doubles(3, 4)));
        assertThat(read(file, "a").rows()).isEqualTo(4);
        assertThat(read(join(join(run, doubles(3, 4)), join(point, doubles(2, 1))), "a")
                        .rows())
                .isEqualTo(4);
    }

    @Test
    void severalRunsNeedAChoice() {
        byte[] run = head("real", "3", "4", "time a b").getBytes(StandardCharsets.US_ASCII);
        byte[] longer = head("real", "3", "6", "time a b").getBytes(StandardCharsets.US_ASCII);
        byte[] file = join(join(run, doubles(3, 4)), join(longer, doubles(3, 6)));
        assertThatThrownBy(() -> read(file, "a"))
                .hasMessage("wave.raw: holds several transient plots; say which one to read with --run");
        write(file);
        assertThat(second(ReadOptions.NONE.withRun(2)).rows()).isEqualTo(6);
        assertThat(second(ReadOptions.NONE.withRun(1)).rows()).isEqualTo(4);
        assertThatThrownBy(() -> second(ReadOptions.NONE.withRun(3)))
                .hasMessage("wave.raw: run 3 was asked for, the file holds 2");
    }

    @Test
    void stepsInsideOnePlotAreRuns() {
        byte[] head = head("real stepped", "2", "6", "time a").getBytes(StandardCharsets.US_ASCII);
        byte[] file = join(head, join(doubles(2, 3), doubles(2, 3)));
        assertThatThrownBy(() -> read(file, "a"))
                .hasMessage("wave.raw, row 4: time goes back from 2 µs to 0 s: a second run starts here;"
                        + " say which one to read with --run");
        assertThat(second(ReadOptions.NONE.withRun(2)).rows()).isEqualTo(3);
    }

    @Test
    void damagedTextIsToldByItsRow() {
        String head = head("real", "2", "3", "time a").replace("Binary:", "Values:");
        String good = " 0\t0.0\n\t1.0\n\n 1\t1e-6\n\t2.0\n\n 2\t2e-6\n\t3.0\n\n";
        assertThat(read((head + good).getBytes(StandardCharsets.US_ASCII), "a").sound())
                .isTrue();
        assertThatThrownBy(() -> read((head + good.replace("2.0", "2.x")).getBytes(StandardCharsets.US_ASCII), "a"))
                .hasMessage("wave.raw, row 2: '2.x' in column 'a' is not a number");
        assertThatThrownBy(() -> read((head + good.replace(" 1\t", " ")).getBytes(StandardCharsets.US_ASCII), "a"))
                .hasMessage("wave.raw, row 2: found '1e-6' in place of the row number 1");
        assertThatThrownBy(() -> read((head + good.replace("2.0", "nan")).getBytes(StandardCharsets.US_ASCII), "a"))
                .hasMessage("wave.raw, row 2: column 'a' is not finite (nan); look into the simulator's log");
        ReadResult torn = read((head + good.replace("\t3.0\n\n", "")).getBytes(StandardCharsets.US_ASCII), "a");
        assertThat(torn.rows()).isEqualTo(2);
        assertThat(torn.remarks().get(0))
                .isEqualTo(Remark.defect("wave.raw, row 3: 1 of 2 values: torn last row, file incomplete"));
    }

    @Test
    void lastNumberOfATextThatMayBeCutShortIsNotUsed() {
        String text = head("real", "2", "3", "time a").replace("Binary:", "Values:")
                + "0\t0\n\t8.5e-05\n1\t1e-6\n\t0.25\n2\t2e-6\n\t8.31245";
        ReadResult reading = read(text.getBytes(StandardCharsets.US_ASCII), "a");
        assertThat(reading.rows()).isEqualTo(2);
        assertThat(reading.sound()).isFalse();
        assertThat(read((text + "e-05\n").getBytes(StandardCharsets.US_ASCII), "a")
                        .rows())
                .isEqualTo(3);
    }

    @Test
    void textInTwoByteCharactersIsRead() {
        String text = head("real", "2", "3", "time a").replace("Binary:", "Values:")
                + "0\t0.0\n\t1.5\n1\t1e-6\n\t2.5\n2\t2e-6\n\t3.5\n";
        for (String mark : List.of("", "\ufeff")) {
            WaveformFile file = open((mark + text).getBytes(StandardCharsets.UTF_16LE));
            assertThat(Recorded.rows(file, "a").get(2)).containsExactly(2e-6, 3.5);
        }
    }

    @Test
    void rowTooLongForOneReachIsRefusedAtOnce() {
        StringBuilder names = new StringBuilder("time");
        for (int i = 1; i < 65_536; i++) {
            names.append(" a").append(i);
        }
        byte[] widest = head("real", "65536", "1", names.toString()).getBytes(StandardCharsets.US_ASCII);
        assertThat(read(join(widest, doubles(65_536, 1)), "a7").rows()).isEqualTo(1);
        byte[] complex = head("complex", "65536", "1", names.toString()).getBytes(StandardCharsets.US_ASCII);
        assertThatThrownBy(() -> open(complex)).hasMessage("wave.raw: a row of 65536 vectors is too long");
    }

    @Test
    void headThatEndsEarlyOrLiesIsAFault() {
        byte[] cut = "Title: x\nPlotname: Transient Analysis\nFlags: real\nNo. Variables: 3\n"
                .getBytes(StandardCharsets.US_ASCII);
        assertThatThrownBy(() -> open(cut))
                .hasMessage("wave.raw: the head of the raw file ends early; look into the simulator's log");
        byte[] lying = head("real", "4", "3", "time a b").getBytes(StandardCharsets.US_ASCII);
        assertThatThrownBy(() -> open(lying))
                .hasMessage("wave.raw: the head of the raw file promises 4 variables, found 'Binary:' in place of"
                        + " number 3");
        byte[] much = head("real", "99999999999999999999", "3", "time a").getBytes(StandardCharsets.US_ASCII);
        assertThatThrownBy(() -> open(much))
                .hasMessage("wave.raw: the head of the raw file has no number behind 'no. variables' but"
                        + " '99999999999999999999'");
    }

    private ReadResult second(ReadOptions options) {
        WaveformFile file = WaveformFile.open(folder.resolve("wave.raw"), options);
        return file.rows(List.of("a"), block -> {});
    }

    private ReadResult read(byte[] bytes, String signal) {
        return open(bytes).rows(List.of(signal), block -> {});
    }

    private WaveformFile open(byte[] bytes) {
        write(bytes);
        return WaveformFile.open(folder.resolve("wave.raw"));
    }

    private void write(byte[] bytes) {
        try {
            Files.write(folder.resolve("wave.raw"), bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String head(String flags, String variables, String points, String names) {
        StringBuilder head = new StringBuilder("Title: a test\nDate: -\nPlotname: Transient Analysis\n");
        head.append("Flags: ").append(flags).append("\nNo. Variables: ").append(variables);
        head.append("\nNo. Points: ").append(points).append("\nVariables:\n");
        int number = 0;
        for (String name : names.replace(' ', '\n').lines().toList()) {
            String type = name.equals("time") || name.equals("frequency") ? name : "voltage";
            head.append('\t')
                    .append(number++)
                    .append('\t')
                    .append(name)
                    .append('\t')
                    .append(type)
                    .append('\n');
        }
        return head.append("Binary:\n").toString();
    }

    private static byte[] doubles(int columns, int rows) {
        ByteBuffer values = ByteBuffer.allocate(columns * rows * 8).order(ByteOrder.LITTLE_ENDIAN);
        for (int row = 0; row < rows; row++) {
            values.putDouble(row * 1e-6);
            for (int column = 1; column < columns; column++) {
                values.putDouble(column + row / 10.0);
            }
        }
        return values.array();
    }

    private static byte[] mixed(int rows, boolean marks) {
        ByteBuffer values = ByteBuffer.allocate(rows * 16).order(ByteOrder.LITTLE_ENDIAN);
        for (int row = 0; row < rows; row++) {
            values.putDouble(marks ? -row * 1e-6 : row * 1e-6)
                    .putFloat(row + 0.5f)
                    .putFloat(-row);
        }
        return values.array();
    }

    private static byte[] join(byte[] one, byte[] other) {
        return ByteBuffer.allocate(one.length + other.length)
                .put(one)
                .put(other)
                .array();
    }
}
