package lampproof.spec;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static lampproof.spec.Faulty.HEADER;
import static lampproof.spec.Faulty.REQUIRED;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpecReaderTest {

    private static final Locale HOST = Locale.getDefault();

    @TempDir
    private Path folder;

    @AfterEach
    void restoreLocale() {
        Locale.setDefault(HOST);
    }

    @Test
    void readsAmountsWordsNotesAndLines() {
        Spec spec = Faulty.read(HEADER + "# a remark\n\n" + REQUIRED + "output.capacitance,,2.2,,uF,\"film, 630 V\"\n");
        assertThat(spec.word("driver.topology")).contains("step-down");
        assertThat(spec.amount("line.voltage")).contains(new Amount(207, 230, 253));
        assertThat(spec.amount("string.current")).contains(Amount.of(0.21));
        SpecRow capacitor = spec.row("output.capacitance").orElseThrow();
        assertThat(capacitor)
                .isEqualTo(new SpecRow("output.capacitance", Amount.of(2.2e-6), Origin.GIVEN, "film, 630 V", 9));
    }

    @Test
    void takesTypForAnOpenEndOfTheSpread() {
        assertThat(Faulty.withRow("sense.resistance,,1,1.01,Ohm,").amount("sense.resistance"))
                .contains(new Amount(1, 1, 1.01));
        assertThat(Faulty.withRow("sense.resistance,0.99,1,,Ohm,").amount("sense.resistance"))
                .contains(new Amount(0.99, 1, 1));
    }

    @Test
    void readsColumnsInAnyOrderAndLetterCase() {
        Spec spec = Faulty.read(
                "Unit,Note,TYP,Min,Max,Quantity,,\n" //
                        + ",,Step-Up,,,Driver.Topology,,\n".replace("Step-Up", "step-up")
                        + "V,mains,230,207,253,LINE.VOLTAGE,,\nHz,,50,,,line.frequency\nV,,420,,,string.voltage\n"
                        + "mA,,16.7,,,string.current\n");
        assertThat(spec.amount("line.voltage")).contains(new Amount(207, 230, 253));
        assertThat(spec.amount("string.current")).contains(Amount.of(0.0167));
    }

    @Test
    void readsCommentsAndBlankLinesThatASpreadsheetHasPadded() {
        Spec spec = Faulty.read("# lamp,,,,,\n,,,,,\n" + HEADER + "\"# a, b\",,,,,\n" + REQUIRED + ",,,,,\n \n");
        assertThat(spec.names()).hasSize(5);
    }

    @Test
    void readsQuotedCells() {
        Spec spec = Faulty.withRow("\"line.resistance\", ,\"0.5\",,\"Ohm\", \"a \"\"long\"\" lead\"");
        assertThat(spec.row("line.resistance").orElseThrow().note()).isEqualTo("a \"long\" lead");
        assertThat(spec.amount("line.resistance")).contains(Amount.of(0.5));
    }

    @ParameterizedTest
    @MethodSource("encodings")
    void readsEveryEncodingAndLineEnd(Charset charset, String mark, String lineEnd) throws IOException {
        String table = HEADER + REQUIRED + "sense.resistance,,4.7,,\u2126,\u00b5\n";
        Path file = Files.write(folder.resolve("lamp.csv"), (mark + table.replace("\n", lineEnd)).getBytes(charset));
        assertThat(SpecReader.read(file).rows()).isEqualTo(Faulty.read(table).rows());
    }

    static Stream<Object[]> encodings() {
        return Stream.of(UTF_8, UTF_16LE, UTF_16BE)
                .flatMap(charset -> Stream.of("", "\ufeff")
                        .flatMap(mark -> Stream.of("\n", "\r\n", "\r").map(end -> new Object[] {charset, mark, end})));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "output.capacitance,,2.2 \u00b5F X7R,,, | 2.2e-6 | X7R",
                "output.capacitance,,100nF/400V,,,film | 1e-7 | 400V; film",
                "output.capacitance,,100 nF / 630 V X2,,, | 1e-7 | 630 V X2",
                "output.capacitance,,.1uF,,, | 1e-7 | ''",
                "sense.resistance,,22 m,,, | 0.022 | ''",
                "filter.damping,,22 k,,, | 2.2e4 | ''",
                "filter.damping,,22,,k, | 2.2e4 | ''",
                "inductor.inductance,,470\u00b5,,, | 470e-6 | ''",
                "inductor.inductance,,470\u03bc,,, | 470e-6 | ''",
                "string.temperature_slope,,-33\u00a0mV/K,,, | -0.033 | ''",
                "switching.slope,,0.1 A/us,,, | 1e5 | ''",
                "ambient.temperature,,25 \u00b0C,,, | 25 | ''",
            })
    void readsAUnitAndARatingBehindTheNumber(String row, double value, String note) {
        Spec spec = Faulty.withRow(row);
        SpecRow last = spec.rows().get(5);
        assertThat(last.setting()).isEqualTo(Amount.of(value));
        assertThat(last.note()).isEqualTo(note);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "output.capacitance;;0,001uF;;; | 1e-9",
                "sense.resistance;;1,5;;Ohm; | 1.5",
                "filter.damping;;1,5k;;; | 1500",
                "filter.damping;;1.234,5;;Ohm; | 1234.5",
                "filter.damping;;33,125;;Ohm; | 33.125",
                "filter.damping;;1,5E+03;;Ohm; | 1500",
            })
    void readsDecimalCommasOfASemicolonTable(String row, double value) {
        assertThat(Faulty.withSemicolonRow(row).rows().get(5).setting()).isEqualTo(Amount.of(value));
        assertThat(Faulty.withSemicolonRow(row).amount("string.current")).contains(Amount.of(0.21));
    }

    @Test
    void readsADecimalPointBesideDecimalCommas() {
        assertThat(Faulty.withSemicolonRow("filter.damping;;0.5;;Ohm;").amount("filter.damping"))
                .contains(Amount.of(0.5));
    }

    @Test
    void readsDecimalPointsOfASemicolonOrTabTable() {
        for (char separator : new char[] {';', '\t'}) {
            String table = HEADER + REQUIRED + "filter.damping,,33.125,,Ohm,\n";
            assertThat(Faulty.read(table.replace(',', separator)).amount("filter.damping"))
                    .contains(Amount.of(33.125));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG", "fr-FR"})
    void readsAndWritesTheSameOnEveryHost(String language) {
        Spec expected = Faulty.withRow("LINE.RESISTANCE,,0.5,,Ohm,");
        String written = SpecWriter.text(expected.rows());
        Locale.setDefault(Locale.forLanguageTag(language));
        Spec spec = Faulty.withRow("LINE.RESISTANCE,,0.5,,Ohm,");
        assertThat(spec.rows()).isEqualTo(expected.rows());
        assertThat(SpecWriter.text(spec.rows())).isEqualTo(written);
        assertThat(Faulty.findingsOfRow("line.resistance,,1000.5,,Ohm,"))
                .containsExactly("lamp.csv, line 7, typ: line.resistance is out of range, found '1000.5', "
                        + "allowed: 0 to 100 Ohm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"stairwell-step-down", "stairwell-step-up"})
    void readsTheExamples(String example) {
        Path examples = Path.of("..", "templates", "src", "main", "resources", "lampproof", "examples");
        Spec spec = SpecReader.read(examples.resolve(example + ".csv"));
        double watts = spec.amount("string.voltage").orElseThrow().typical()
                * spec.amount("string.current").orElseThrow().typical();
        assertThat(spec.word("driver.topology").map("stairwell-"::concat)).contains(example);
        assertThat(watts).isBetween(6.9, 7.1);
    }
}
