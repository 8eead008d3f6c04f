package lampproof.waveform.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import lampproof.fault.UserFault;
import lampproof.waveform.ReadResult;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Damaged files end in a fault, in a remark that spoils them, or in every row that they still hold; never in a crash, a
 * hang, or fewer rows without a word.
 */
class MutatedFilesTest {

    @TempDir
    Path folder;

    @Test
    void twoThousandMutations() {
        run(20260101, 2_000);
    }

    @ParameterizedTest
    @ValueSource(longs = {20260101, 7, 8128, 271828, 31415926})
    @Tag("long")
    void hundredThousandMutations(long seed) {
        run(seed, 100_000);
    }

    private void run(long seed, int count) {
        Random random = new Random(seed);
        List<byte[]> seeds = seeds();
        TreeMap<String, Integer> outcomes = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            byte[] mutant = mutated(seeds.get(i % seeds.size()), random);
            String outcome = assertTimeoutPreemptively(Duration.ofMinutes(3), () -> outcome(mutant));
            outcomes.merge(outcome, 1, Integer::sum);
        }
        System.getLogger("mutations").log(System.Logger.Level.INFO, "seed " + seed + ": " + outcomes);
        assertThat(outcomes).containsKeys("fault", "spoilt", "whole");
        assertThat(outcomes.values().stream().mapToInt(n -> n).sum()).isEqualTo(count);
    }

    private String outcome(byte[] mutant) throws IOException {
        Path path = Files.write(folder.resolve("mutant"), mutant);
        try {
            WaveformFile file = WaveformFile.open(path);
            List<double[]> rows = new ArrayList<>();
            ReadResult reading = file.stream(file.signals(), Recorded.sink(rows));
            assertRowsAreOrderedAndFinite(rows);
            if (!reading.sound()) {
                return "spoilt";
            }
            if (!file.format().contains("raw file") && !file.format().contains("gzip")) {
                assertNoRowLost(mutant, rows.size() + leftOut(reading), file);
            }
            return "whole";
        } catch (UserFault fault) {
            assertThat(fault.kind()).isEqualTo(UserFault.Kind.NO_VERDICT);
            return "fault";
        }
    }

    private static void assertRowsAreOrderedAndFinite(List<double[]> rows) {
        double before = Double.NEGATIVE_INFINITY;
        for (double[] row : rows) {
            assertThat(Arrays.stream(row).allMatch(Double::isFinite)).isTrue();
            assertThat(row[0]).isGreaterThanOrEqualTo(before);
            before = row[0];
        }
    }

    /**
     * Each line that looks like numbers, by another and simpler reading, must have come out as a row. Before the first that begins
     * like a number there is no telling a damaged row from a head.
     */
    private static void assertNoRowLost(byte[] mutant, long rows, WaveformFile file) {
        String text = new String(mutant, StandardCharsets.ISO_8859_1);
        long lines = text.lines()
                .dropWhile(line -> !line.strip().matches("[-+.,0-9].*"))
                .filter(MutatedFilesTest::numbers)
                .count();
        assertThat(rows).as("%s%n%s", file.format(), text).isEqualTo(lines);
    }

    /** Rows that the reading says it left out. */
    private static long leftOut(ReadResult reading) {
        return reading.remarks().stream()
                .filter(remark -> remark.text().endsWith(": row left out"))
                .count();
    }

    private static boolean numbers(String line) {
        List<String> cells = List.of(line.strip().split("[;,\\s]+", -1));
        return cells.stream()
                        .filter(c -> c.matches("[-+]?[0-9.]+([eEdD][-+]?[0-9]+)?[numpk]?"))
                        .count()
                >= 2;
    }

    private static List<byte[]> seeds() {
        List<byte[]> seeds = new ArrayList<>();
        for (String name : List.of(
                "single-scale.txt", "repeated-scale.txt", "nameless.txt", "gnucap.txt", "text.raw", "binary.raw")) {
            seeds.add(Recorded.bytes(name));
        }
        seeds.add("time,v(bus),i(led)\n0.0,320.0,0.060\n1.0e-5,321.0,0.061\n2.0e-5,322.0,0.061\n3e-5,323,0.06\n"
                .getBytes(StandardCharsets.US_ASCII));
        seeds.add("Zeit;U;I\r\n0,00E+00;1,52E+02;6,10E-02\r\n1,00E-05;1,54E+02;6,30E-02\r\n3,00E-05;1,5E+02;6,3E-02\r\n"
                .getBytes(StandardCharsets.US_ASCII));
        seeds.add("Index TIME V(OUT)\n0 0.0 0.0\n1 1e-6 2.0\n2 4e-6 2.0\nEnd of Xyce(TM) Simulation\n"
                .getBytes(StandardCharsets.US_ASCII));
        seeds.add("#Scope\n\nTime (s),CH1 (V)\n0.000,4.0\n0.001,2.0\n0.002,2.0\n0.004,2.0\n"
                .getBytes(StandardCharsets.US_ASCII));
        return seeds;
    }

    private static byte[] mutated(byte[] seed, Random random) {
        byte[] bytes = seed.clone();
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes && bytes.length > 2; i++) {
            bytes = changed(bytes, random);
        }
        return bytes;
    }

    private static byte[] changed(byte[] bytes, Random random) {
        int from = random.nextInt(bytes.length);
        int length = Math.min(bytes.length - from, 1 + random.nextInt(40));
        byte[] copy = bytes.clone();
        switch (random.nextInt(7)) {
            case 0 -> copy[from] ^= (byte) (1 << random.nextInt(8));
            case 1 -> copy[from] = (byte) random.nextInt(256);
            case 2 -> copy[from] = (byte) "0123456789.,;-+eE \t\n\r\"nN#".charAt(random.nextInt(25));
            case 3 -> copy = Arrays.copyOf(bytes, from + 1);
            case 4 -> copy = joined(bytes, from, bytes, from + length);
            case 5 -> copy = joined(bytes, from + length, bytes, from);
            default -> Arrays.fill(copy, from, from + length, (byte) 0);
        }
        return copy;
    }

    /** The start of one and the rest of another. */
    private static byte[] joined(byte[] start, int to, byte[] rest, int from) {
        byte[] all = Arrays.copyOf(start, to + rest.length - from);
        System.arraycopy(rest, from, all, to, rest.length - from);
        return all;
    }
}
