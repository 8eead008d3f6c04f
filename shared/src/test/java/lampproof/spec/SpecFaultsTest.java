package lampproof.spec;

import static lampproof.spec.Faulty.HEADER;
import static lampproof.spec.Faulty.REQUIRED;
import static lampproof.spec.Faulty.findings;
import static lampproof.spec.Faulty.findingsOfRow;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpecFaultsTest {

    private static final String WANTED = "quantity,min,typ,max,unit,note";

    @TempDir
    private Path folder;

    @Test
    void collectsEveryFaultOfATableInTheOrderOfItsLines() {
        assertThat(findings(() -> Faulty.read(HEADER + """
                        driver.topology,,stepdown,,,
                        line.volage,207,230,253,V,
                        line.frequency,45,50,70,kHz,
                        string.voltage,,33,,V,"open
                        string.current,1x,0.21,,V,
                        """)))
                .containsExactly(
                        "lamp.csv, line 2, typ: driver.topology has no such word, found 'stepdown', "
                                + "allowed: step-down, step-up; did you mean step-down?",
                        "lamp.csv, line 3, quantity: this name is not known, found 'line.volage', "
                                + "allowed: line.voltage, line.frequency, line.resistance; did you mean line.voltage?",
                        "lamp.csv, line 4, min: line.frequency is out of range, found '45', allowed: 0.045 to 0.065 kHz",
                        "lamp.csv, line 4, typ: line.frequency is out of range, found '50', allowed: 0.045 to 0.065 kHz",
                        "lamp.csv, line 4, max: line.frequency is out of range, found '70', allowed: 0.045 to 0.065 kHz",
                        "lamp.csv, line 5: the quotes do not match; close every quote, and double a quote inside a quoted cell",
                        "lamp.csv, line 6, min: a second unit beside V, found 'x'; leave the unit in the unit column only",
                        "lamp.csv, line 6, unit: a unit of voltage stands where one of current belongs, found 'V', "
                                + "allowed: pA, nA, uA, mA, A, kA");
    }

    @Test
    void namesEveryRequiredRowThatIsMissing() {
        assertThat(findings(() -> Faulty.read(HEADER + "line.frequency,,50,,Hz,\n")))
                .containsExactly(
                        "lamp.csv: driver.topology is missing, allowed: step-down, step-up; add a row for the converter",
                        "lamp.csv: line.voltage is missing, allowed: 80 V to 305 V; "
                                + "add a row for the rms voltage of the mains",
                        "lamp.csv: string.voltage is missing, allowed: 2 V to 600 V; "
                                + "add a row for the voltage of the LED string at its current, 25 degC",
                        "lamp.csv: string.current is missing, allowed: 1 mA to 3 A; "
                                + "add a row for the mean current of the LED string");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "line.voltage,,120,,V, | quantity: line.voltage stands twice, before on line 3; keep one of the two rows",
                ",,120,,V, | quantity: this row has no name; name the quantity, or begin a remark with #",
                "colour.warm,,1,,, | quantity: this name is not known, found 'colour.warm', allowed: names of the groups "
                        + "line, dimmer, filter, bridge, bus, driver, switching, inductor, switch, diode, sense, output, "
                        + "bleeder, bias, string, surge, derating, ambient, thermal, life, decks, tolerance",
                "bus.capacitance,1,,2,uF, | typ: bus.capacitance has no typical value; put the value to design for into typ",
                "bus.capacitance,,,,, | typ: bus.capacitance has no typical value; put the value to design for into typ",
                "bus.capacitance,3,2,1,uF, | : bus.capacitance does not rise from min over typ to max, found '3, 2, 1'",
                "bus.capacitance,,2.2,,, | unit: the unit of this capacitance is missing, allowed: fF, pF, nF, uF, mF, F",
                "bus.capacitance,,2.2uF -20%,,, | typ: more than a value in one cell, found '2.2uF -20%'; "
                        + "keep the number, put the unit into the unit column and the rest into the note",
                "ambient.temperature,,25 degC X7R,,, | typ: more than a value in one cell, found '25 degC X7R'; "
                        + "keep the number, put the unit into the unit column and the rest into the note",
                "bus.capacitance,,220,,mF, | typ: bus.capacitance is out of range, found '220', allowed: 0 to 0.1 mF",
                "filter.damping,,2000,,k, | typ: filter.damping is out of range, found '2000', allowed: 0 to 1000 kOhm",
                "string.count,,11.5,,, | typ: string.count is a whole number, found '11.5'",
                "string.count,,11,,V, | unit: a plain number has no unit, found 'V', allowed: an empty cell",
                "driver.control,,3,,, | typ: driver.control takes a word, not a number, found '3', "
                        + "allowed: boundary, fixed-duty, peak-current, fixed-off-time",
                "driver.control,boundary,,,, | min: driver.control takes a word, and that in typ, found 'boundary', "
                        + "allowed: an empty cell",
                "driver.control,,boundary,,V, | unit: driver.control takes a word, and that in typ, found 'V', "
                        + "allowed: an empty cell",
                "inductor.core,,=1+1,,, | typ: inductor.core has no such word, found '=1+1', allowed: a part name in ASCII",
                "bus.capacitance,,1,5,uF,film,x | : this row has 7 cells, the header 6; "
                        + "put quotes around a note that holds the separator, and write a decimal point",
                "bus.capacitance,,\"1,5\",,uF, | typ: the decimal mark of this table is the point, found '1,5'; "
                        + "write the decimal point, and no thousands separator",
                "bus.capacitance,,\"1.234,5\",,uF, | typ: a thousands separator in a number, found '1.234,5'; "
                        + "write the digits without it",
                "filter.damping,,4k7,,, | typ: a prefix inside a number, found '4k7'; "
                        + "write 4.7 kOhm: the number 4.7 with the unit kOhm",
                "bus.capacitance,,2\u200b.2,,uF, | typ: a character that cannot be seen, found 'U+200B'; delete it",
                "bus.capacitance,,2.2,,uF,\u001b[2J | note: a character that cannot be seen, found 'U+001B'; delete it",
                "bus.capacitance,,2.2,,uF,\u202eabc | note: a character that cannot be seen, found 'U+202E'; delete it",
            })
    void saysWhereAndWhatIsWrong(String row, String message) {
        String place = "lamp.csv, line 7" + (message.startsWith(":") ? "" : ", ");
        assertThat(findingsOfRow(row)).containsExactly(place + message);
    }

    @Test
    void refusesTheOtherDecimalMark() {
        assertThat(findings(() -> Faulty.withSemicolonRow("filter.damping;;1.500;;Ohm;")))
                .containsExactly("lamp.csv, line 7, typ: the decimal mark of this table is the comma, found '1.500'; "
                        + "write the decimal comma, and no thousands separator");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"; | 1.000 | 1000", "TAB | 1.500 | 1500", "TAB | 1,500 | 1500"})
    void asksWhenANumberCouldBeOneOrOneThousand(String separator, String number, String thousands) {
        String rows = (HEADER + REQUIRED.replace("0.21,,A", "210,,mA")).replace(",", separator);
        String table = rows + String.join(separator, "filter.damping", "", number, "", "Ohm", "");
        assertThat(findings(() -> Faulty.read(table.replace("TAB", "\t"))))
                .containsExactly("lamp.csv, line 7, typ: this could be " + thousands + " or a decimal, found '" + number
                        + "'; write " + thousands + ", or " + number + "0 with one digit more");
    }

    @Test
    void refusesAnOriginThatIsNotKnown() {
        String table = HEADER.replace("note", "note,origin") + REQUIRED + "bus.capacitance,,1,,uF,,guessed\n";
        assertThat(findings(() -> Faulty.read(table)))
                .containsExactly("lamp.csv, line 7, origin: this origin is not known, found 'guessed', "
                        + "allowed: given, default");
    }

    @Test
    void saysWhatIsWrongWithTheHeader() {
        assertThat(findings(() -> Faulty.read("")))
                .containsExactly("lamp.csv: the table is empty; begin it with the line " + WANTED);
        assertThat(findings(() -> Faulty.read(REQUIRED)))
                .containsExactly("lamp.csv, line 1: this is no header line, found 'driver.topology,,step-down,,,', "
                        + "allowed: " + WANTED);
        assertThat(findings(() -> Faulty.read("quantity,minimum,typ,maxx,unit,unit,note\n" + REQUIRED)))
                .containsExactly(
                        "lamp.csv, line 1: this column is not known, found 'minimum', allowed: " + WANTED
                                + "; put remarks into the note",
                        "lamp.csv, line 1: this column is not known, found 'maxx', allowed: " + WANTED
                                + "; did you mean max?",
                        "lamp.csv, line 1: column min is missing",
                        "lamp.csv, line 1: column max is missing",
                        "lamp.csv, line 1: column unit stands twice");
    }

    @Test
    void refusesWhatIsNoSmallTextTable() throws IOException {
        Path file = folder.resolve("lamp.csv");
        assertThat(findings(() -> SpecReader.read(file)))
                .containsExactly(file + ": there is no such file; check the name of the spec");
        assertThat(findings(() -> SpecReader.read(folder)))
                .containsExactly(folder + ": the file cannot be read; check that it is a readable text file");
        Files.write(file, (HEADER + "line.voltage,,2\u00b5\n").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(findings(() -> SpecReader.read(file)))
                .containsExactly(file + ", line 2: this is not UTF-8 text; save the table as UTF-8 text");
        Files.write(file, new byte[(1 << 20) + 1]);
        assertThat(findings(() -> SpecReader.read(file)))
                .containsExactly(file + ": the file is larger than 1 MiB; a spec is a short table; check the name");
        assertThat(findings(() -> Faulty.read("\n".repeat(10_001))))
                .containsExactly("lamp.csv: the table has more than 10000 lines; check the name of the spec");
        assertThat(findingsOfRow("x".repeat(101) + ",,,,,"))
                .containsExactly("lamp.csv, line 7, quantity: this cell has more than 100 characters; shorten it");
    }

    @Test
    void meetsNoMutatedTableWithAnythingButASpecOrAFault() {
        Random random = new Random(1);
        byte[] table = (HEADER + REQUIRED + "output.capacitance,1 nF,\"2.2 \u00b5F X7R\",,,n;\"\n")
                .getBytes(StandardCharsets.UTF_8);
        int specs = 0;
        for (int run = 0; run < 1_000; run++) {
            byte[] mutated = table.clone();
            for (int change = random.nextInt(4); change >= 0; change--) {
                mutated[random.nextInt(mutated.length)] =
                        (byte) (random.nextInt(4) > 0 ? random.nextInt(128) : random.nextInt());
            }
            specs += reads(mutated) ? 1 : 0;
        }
        assertThat(specs).isBetween(1, 999);
    }

    private boolean reads(byte[] bytes) {
        try {
            SpecReader.read(Files.write(folder.resolve("mutated.csv"), bytes));
            return true;
        } catch (UserFault fault) {
            assertThat(fault.findings()).isNotEmpty();
            return false;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
