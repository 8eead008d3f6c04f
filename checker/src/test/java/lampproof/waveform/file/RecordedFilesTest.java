package lampproof.waveform.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One run, written by the simulator in each of its forms, gives the same rows. */
class RecordedFilesTest {

    private static final String[] NAMES = {"v(a)", "v(b)", "i(v1)"};
    private static final ReadOptions HINTS = ReadOptions.named(List.of(NAMES));

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"single-scale.txt", "repeated-scale.txt", "nameless.txt", "text.raw", "binary.raw"})
    void everyFormGivesTheSameRows(String name) {
        List<double[]> expected = Recorded.rows(WaveformFile.open(Recorded.resource("single-scale.txt")), NAMES);
        WaveformFile file = WaveformFile.open(Recorded.resource(name), HINTS);
        double written = name.equals("text.raw") ? 1e-15 : 0;
        assertThat(Recorded.rows(file, NAMES))
                .hasSize(109)
                .usingElementComparator((a, b) -> same(a, b, written) ? 0 : 1)
                .containsExactlyElementsOf(expected);
        assertThat(file.rows(List.of(), block -> {}).remarks()).isEmpty();
        assertThat(file.span().end()).isCloseTo(2e-5, within(1e-19));
    }

    @ParameterizedTest
    @ValueSource(strings = {"single-scale.txt", "repeated-scale.txt", "nameless.txt", "text.raw", "binary.raw"})
    void packingChangesNothing(String name) throws IOException {
        Path packed = Files.write(folder.resolve("wave.bin"), packed(Recorded.bytes(name)));
        WaveformFile file = WaveformFile.open(packed, HINTS);
        assertThat(Recorded.rows(file, NAMES))
                .containsExactlyElementsOf(Recorded.rows(WaveformFile.open(Recorded.resource(name), HINTS), NAMES));
        assertThat(file.format()).startsWith("gzip of ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"single-scale.txt", "nameless.txt", "text.raw", "binary.raw"})
    void packedFileThatEndsEarlyIsNotSound(String name) throws IOException {
        byte[] packed = packed(Recorded.bytes(name));
        Path file = folder.resolve("wave.gz");
        Files.write(file, java.util.Arrays.copyOf(packed, packed.length - 300));
        ReadResult reading = WaveformFile.open(file, HINTS).rows(List.of("v(a)"), block -> {});
        assertThat(reading.sound()).isFalse();
        assertThat(reading.remarks()).contains(Remark.defect("wave.gz: the packed file ends early, file incomplete"));
    }

    @Test
    void otherSimulatorsAgreeWithinTheirOwnAccuracy() {
        WaveformFile gnucap = WaveformFile.open(Recorded.resource("gnucap.txt"));
        List<double[]> rows = Recorded.rows(gnucap, "v(b)", "i(r1)");
        assertThat(gnucap.format())
                .isEqualTo("table with blanks between the columns, names, numbers with scale letters, 3 signals");
        assertThat(rows).hasSize(41);
        assertThat(rows.get(1)).containsExactly(500e-9, 3.90482776, 0.00609517218);
        assertThat(rows.get(5)).containsExactly(2.5e-6, 9.17539659, 824.603405e-6);
        assertThat(rows.get(40)[0]).isEqualTo(20e-6);
    }

    @Test
    void formsAreSaidInWords() {
        assertThat(WaveformFile.open(Recorded.resource("binary.raw")).format())
                .isEqualTo("SPICE raw file, binary, 8-byte values, 3 signals");
        assertThat(WaveformFile.open(Recorded.resource("text.raw")).format())
                .isEqualTo("SPICE raw file, text, 3 signals");
        assertThat(WaveformFile.open(Recorded.resource("nameless.txt")).format())
                .isEqualTo("table with blanks between the columns, no names, time repeated in front of each signal,"
                        + " 3 signals");
    }

    /** Text raw files hold 16 digits, one less than a number needs; the other forms are exact. */
    private static boolean same(double[] one, double[] other, double relative) {
        for (int i = 0; i < one.length; i++) {
            if (Math.abs(one[i] - other[i]) > relative * Math.abs(one[i])) {
                return false;
            }
        }
        return true;
    }

    private static byte[] packed(byte[] bytes) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (OutputStream out = new GZIPOutputStream(packed)) {
            out.write(bytes);
        }
        return packed.toByteArray();
    }
}
