package lampproof.spec;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import lampproof.unit.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpecWriterTest {

    @TempDir
    private Path folder;

    @Test
    void writesEveryRowWithItsOrigin() {
        List<SpecRow> rows = new ArrayList<>(
                Faulty.withRow("bus.capacitance,,100nF/400V,,,\"film, small\"").rows());
        rows.add(SpecRow.filledIn("inductor.inductance", new Amount(0.9e-3, 1e-3, 1.1e-3), "ten per cent"));
        assertThat(SpecWriter.text(rows)).isEqualTo("""
                        # The spec as understood: origin is given or default.
                        quantity,min,typ,max,unit,note,origin
                        driver.topology,,step-down,,,,given
                        line.voltage,207,230,253,V,,given
                        line.frequency,,50,,Hz,,given
                        string.voltage,,33,,V,,given
                        string.current,,210,,mA,,given
                        bus.capacitance,,100,,nF,"400V; film, small",given
                        inductor.inductance,0.9,1,1.1,mH,ten per cent,default
                        """);
    }

    @Test
    void writesWhatTheReaderGivesBackBitForBit() {
        Random random = new Random(2);
        for (int run = 0; run < 40; run++) {
            List<SpecRow> rows = Vocabulary.entries().stream()
                    .map(entry -> SpecRow.filledIn(entry.name(), setting(entry, random), "rule"))
                    .toList();
            List<Setting> read = Faulty.read(SpecWriter.text(rows)).rows().stream()
                    .map(SpecRow::setting)
                    .toList();
            assertThat(read).isEqualTo(rows.stream().map(SpecRow::setting).toList());
        }
    }

    @Test
    void keepsTheOriginOfEveryRow() {
        SpecRow filledIn = SpecRow.filledIn("bridge.drop", Amount.of(0.9), "silicon");
        List<SpecRow> rows = Stream.concat(Faulty.withRow("").rows().stream(), Stream.of(filledIn))
                .toList();
        Spec spec = Faulty.read(SpecWriter.text(rows));
        assertThat(spec.row("bridge.drop").orElseThrow().origin()).isEqualTo(Origin.DEFAULT);
        assertThat(spec.row("line.voltage").orElseThrow().origin()).isEqualTo(Origin.GIVEN);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "=1+1 | '=1+1",
                "+1 | '+1",
                "-40 degC | '-40 degC",
                "@x | '@x",
                "see a;=b | see a;'=b",
                "'=1+1 | '=1+1",
                "a = b, c - d | a = b, c - d",
            })
    void takesTheForceFromFormulasInNotes(String note, String written) {
        List<SpecRow> rows =
                Faulty.withRow("bridge.drop,,0.9,,V,\"" + note + "\"").rows();
        assertThat(Faulty.read(SpecWriter.text(rows))
                        .row("bridge.drop")
                        .orElseThrow()
                        .note())
                .isEqualTo(written);
    }

    @Test
    void replacesTheWholeFileAndLeavesNothingElseBehind() throws IOException {
        Path file = Files.writeString(folder.resolve("spec.csv"), "old");
        List<SpecRow> rows = Faulty.withRow("").rows();
        SpecWriter.write(file, rows);
        assertThat(file).hasContent(SpecWriter.text(rows));
        assertThat(folder).isDirectoryContaining("glob:**/spec.csv");
        assertThat(folder.toFile().list()).containsExactly("spec.csv");
    }

    @Test
    void saysWhenTheFileCannotBeWritten() {
        Path file = folder.resolve("no-folder").resolve("spec.csv");
        assertThat(Faulty.findings(() -> SpecWriter.write(file, List.of())))
                .containsExactly(
                        file + ": the file cannot be written; check that the folder is there and may be written to");
    }

    private static Setting setting(Entry entry, Random random) {
        if (entry instanceof Quantity quantity) {
            double[] values = random.doubles(3, quantity.least(), quantity.most())
                    .sorted()
                    .toArray();
            boolean whole = quantity.dimension() == Dimension.COUNT;
            return whole ? Amount.of(Math.rint(values[0])) : new Amount(values[0], values[1], values[2]);
        }
        List<String> words = ((Choice) entry).words();
        return new Word(words.isEmpty() ? "E 20/10" : words.get(random.nextInt(words.size())));
    }
}
