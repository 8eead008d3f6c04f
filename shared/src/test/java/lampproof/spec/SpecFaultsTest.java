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
import java.util.HexFormat;
import java.util.Random;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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
                                + "allowed: step-down, step-up; write step-down",
                        "lamp.csv, line 3, quantity: unknown name, found 'line.volage', "
                                + "allowed: line.voltage, line.frequency, line.resistance; did you mean line.voltage?",
                        "lamp.csv, line 4, min: line.frequency is out of range, found '45', allowed: 0.045 to 0.065 kHz",
                        "lamp.csv, line 4, typ: line.frequency is out of range, found '50', allowed: 0.045 to 0.065 kHz",
                        "lamp.csv, line 4, max: line.frequency is out of range, found '70', allowed: 0.045 to 0.065 kHz",
                        "lamp.csv, line 5: the quotes do not match; close every quote, and double a quote inside a quoted cell",
                        "lamp.csv, line 6, min: a unit in the cell and in the unit column, found '1 x'; write only 1 here and keep V in the unit column",
                        "lamp.csv, line 6, unit: a unit of voltage instead of a unit of current, found 'V', "
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
                                + "add a row for the voltage of the LED string at string.current, 25 degC",
                        "lamp.csv: string.current is missing, allowed: 1 mA to 3 A; "
                                + "add a row for the mean current of the LED string");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "line.voltage,,120,,V, | quantity: line.voltage is given twice, first on line 3; keep one of the two rows",
                ",,120,,V, | quantity: the row has no name; name the quantity, or begin a remark with #",
                "colour.warm,,1,,, | quantity: unknown name, found 'colour.warm', allowed: names of the groups "
                        + "line, dimmer, filter, bridge, bus, driver, switching, inductor, switch, diode, sense, output, "
                        + "bleeder, bias, string, surge, derating, ambient, thermal, life, decks, tolerance",
                "bus.capacitance,1,,2,uF, | typ: bus.capacitance has no typical value; put the value to design for into typ",
                "bus.capacitance,,,,, | typ: bus.capacitance has no typical value; put the value to design for into typ",
                "bus.capacitance,3,2,1,uF, | : bus.capacitance must rise from min to typ to max, found '3, 2, 1'",
                "bus.capacitance,,2.2,,, | unit: the unit of this capacitance is missing, allowed: fF, pF, nF, uF, mF, F",
                "bus.capacitance,,2.2uF -20%,,, | typ: more than one value in a cell, found '2.2uF -20%'; "
                        + "keep the number, put the unit into the unit column and the rest into the note",
                "ambient.temperature,,25 degC X7R,,, | typ: more than one value in a cell, found '25 degC X7R'; "
                        + "keep the number, put the unit into the unit column and the rest into the note",
                "bus.capacitance,,220,,mF, | typ: bus.capacitance is out of range, found '220', allowed: 0 to 0.1 mF",
                "filter.damping,,2000,,k, | typ: filter.damping is out of range, found '2000', allowed: 0 to 1000 kOhm",
                "string.count,,11.5,,, | typ: string.count must be a whole number, found '11.5'",
                "string.count,,11,,V, | unit: a unit after a plain number, found 'V', allowed: an empty cell",
                "driver.control,,3,,, | typ: driver.control needs a word, not a number, found '3', "
                        + "allowed: boundary, fixed-duty, peak-current, fixed-off-time",
                "driver.control,boundary,,,, | min: driver.control has a word in typ and no other value, found 'boundary', "
                        + "allowed: an empty cell",
                "driver.control,,boundary,,V, | unit: driver.control has a word in typ and no other value, found 'V', "
                        + "allowed: an empty cell",
                "inductor.core,,=1+1,,, | typ: inductor.core has no such word, found '=1+1', allowed: a part name in ASCII",
                "bus.capacitance,,1,,uF,film,x | : the row has 7 cells, the header 6; "
                        + "put quotes around a note that contains the separator",
                "bus.capacitance,,\"1,5\",,uF, | typ: the decimal mark of this table is the point, found '1,5'; "
                        + "write the decimal point, and no thousands separator",
                "bus.capacitance,,\"1.234,5\",,uF, | typ: a thousands separator in a number, found '1.234,5'; "
                        + "write the digits without it",
                "filter.damping,,4k7,,, | typ: a prefix inside a number, found '4k7'; "
                        + "write 4.7 kOhm: the number 4.7 with the unit kOhm",
                "bus.capacitance,,2\u200b.2,,uF, | typ: an invisible character, found 'U+200B'; delete it",
                "bus.capacitance,,2.2,,uF,\u001b[2J | note: an invisible character, found 'U+001B'; delete it",
                "bus.capacitance,,2.2,,uF,\u202eabc | note: an invisible character, found 'U+202E'; delete it",
            })
    void saysWhereAndWhatIsWrong(String row, String message) {
        String place = "lamp.csv, line 7" + (message.startsWith(":") ? "" : ", ");
        assertThat(findingsOfRow(row)).containsExactly(place + message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bus.capacitance,,0,6,,uF,film | 0,6 | 0.6",
                "bus.capacitance,,0,6,,uF, | 0,6 | 0.6",
                "bus.capacitance,0,5,0,6,0,7,uF, | 0,5,0,6,0,7 | every number with a decimal point",
                "bus.capacitance,,0,6uF,, | 0,6uF | 0.6uF",
                "line.voltage,207,230,5,253,V, | 207,230,5,253 | every number with a decimal point",
                "driver.shaping,,0,6,,,a note | 0,6 | 0.6",
            })
    void recognisesADecimalCommaThatShiftedTheCells(String row, String found, String write) {
        assertThat(findings(() -> Faulty.read(HEADER + REQUIRED.replaceAll("(?m)^line.voltage.*\n", "") + row + "\n")))
                .contains("lamp.csv, line 6: a decimal comma in a comma-separated table shifted the cells, found '"
                        + found + "'; write " + write + ", or separate the columns with semicolons");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bus.capacitance,,1,6,uF,",
                "bus.capacitance,1,2,3,uF,",
                "bus.capacitance,,1 uF,6 uF,,",
                "inductor.turns,,100,120,,"
            })
    void readsMinTypAndMaxWithoutDecimals(String row) {
        assertThat(Faulty.withRow(row).names()).contains(row.split(",", -1)[0]);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "120V | V | typ: a unit in the cell and in the unit column, found '120 V'; "
                        + "write only 120 here and keep V in the unit column",
                "230 V | V | typ: a unit in the cell and in the unit column, found '230 V'; "
                        + "write only 230 here and keep V in the unit column",
                "120Vac | '' | typ: unknown unit, found 'Vac', allowed: uV, mV, V, kV; "
                        + "write V; the row defines whether it is an rms, mean or peak value",
            })
    void explainsAUnitInTheCell(String cell, String unit, String message) {
        String rows = REQUIRED.replaceAll("(?m)^line.voltage.*\n", "");
        assertThat(findings(() -> Faulty.read(HEADER + rows + "line.voltage,," + cell + ",," + unit + ",\n")))
                .containsExactly("lamp.csv, line 6, " + message);
    }

    @ParameterizedTest
    @CsvSource({
        "buck,buck is the common name of step-down: write step-down",
        "Boost,boost is the common name of step-up: write step-up",
        "buck converter,buck is the common name of step-down: write step-down",
        "step down,write step-down",
        "stepdown,write step-down",
        "Step_Up,write step-up",
        "buck-boost,lampproof has no buck-boost converter: write step-down or step-up",
        "flyback,lampproof has no flyback converter: write step-down or step-up",
        "SEPIC,lampproof has no SEPIC converter: write step-down or step-up",
        "stpe-up,did you mean step-up?"
    })
    void explainsOtherNamesOfConverters(String word, String advice) {
        assertThat(findings(() -> Faulty.read(HEADER + REQUIRED.replace("step-down", word))))
                .containsExactly("lamp.csv, line 2, typ: driver.topology has no such word, found '" + word
                        + "', allowed: step-down, step-up; " + advice);
    }

    @Test
    void namesTheSpecOfARunFolder() throws IOException {
        Path inside = Files.writeString(folder.resolve("spec.csv"), HEADER + REQUIRED);
        assertThat(findings(() -> SpecReader.read(folder)))
                .containsExactly(
                        folder + ": the spec is a folder, not a file; name the spec in this run folder: " + inside);
    }

    @ParameterizedTest
    @ValueSource(strings = {"504b030414000600", "504b0506000000000000", "d0cf11e0a1b11ae10000"})
    void rejectsAWorkbook(String start) throws IOException {
        Path file = Files.write(folder.resolve("lamp.xlsx"), HexFormat.of().parseHex(start));
        assertThat(findings(() -> SpecReader.read(file)))
                .containsExactly(
                        file + ": the spec is a workbook, not a text table; save the sheet as CSV and name that file");
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
                .containsExactly("lamp.csv, line 7, typ: ambiguous number: " + thousands + " or a decimal, found '"
                        + number + "'; write " + thousands + ", or " + number + "0 with one digit more");
    }

    @Test
    void refusesAnOriginThatIsNotKnown() {
        String table = HEADER.replace("note", "note,origin") + REQUIRED + "bus.capacitance,,1,,uF,,guessed\n";
        assertThat(findings(() -> Faulty.read(table)))
                .containsExactly(
                        "lamp.csv, line 7, origin: unknown origin, found 'guessed', " + "allowed: given, default");
    }

    @Test
    void saysWhatIsWrongWithTheHeader() {
        assertThat(findings(() -> Faulty.read("")))
                .containsExactly("lamp.csv: the table is empty; begin it with the line " + WANTED);
        assertThat(findings(() -> Faulty.read(REQUIRED)))
                .containsExactly("lamp.csv, line 1: invalid header line, found 'driver.topology,,step-down,,,', "
                        + "allowed: " + WANTED);
        assertThat(findings(() -> Faulty.read("quantity,minimum,typ,maxx,unit,unit,note\n" + REQUIRED)))
                .containsExactly(
                        "lamp.csv, line 1: unknown column, found 'minimum', allowed: " + WANTED
                                + "; put remarks into the note",
                        "lamp.csv, line 1: unknown column, found 'maxx', allowed: " + WANTED + "; did you mean max?",
                        "lamp.csv, line 1: column min is missing",
                        "lamp.csv, line 1: column max is missing",
                        "lamp.csv, line 1: column unit is there twice");
    }

    @Test
    void refusesWhatIsNoSmallTextTable() throws IOException {
        Path file = folder.resolve("lamp.csv");
        assertThat(findings(() -> SpecReader.read(file)))
                .containsExactly(file + ": the file does not exist; check the name of the spec");
        assertThat(findings(() -> SpecReader.read(folder)))
                .containsExactly(folder
                        + ": the spec is a folder, not a file; name a spec file in the folder, such as lamp.csv");
        Files.write(file, (HEADER + "line.voltage,,2\u00b5\n").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(findings(() -> SpecReader.read(file)))
                .containsExactly(file + ", line 2: invalid UTF-8 text; save the table as UTF-8 text");
        Files.write(file, new byte[(1 << 20) + 1]);
        assertThat(findings(() -> SpecReader.read(file)))
                .containsExactly(file + ": the file is larger than 1 MiB; a spec is a short table; check the name");
        assertThat(findings(() -> Faulty.read("\n".repeat(10_001))))
                .containsExactly("lamp.csv: the table has more than 10000 lines; check the name of the spec");
        assertThat(findingsOfRow("x".repeat(101) + ",,,,,"))
                .containsExactly("lamp.csv, line 7, quantity: the cell has more than 100 characters; shorten it");
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
