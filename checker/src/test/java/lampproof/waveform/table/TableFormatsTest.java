package lampproof.waveform.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lampproof.fault.UserFault;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Remark;
import lampproof.waveform.Signal;
import lampproof.waveform.file.Recorded;
import lampproof.waveform.file.WaveformFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables as simulators, spreadsheets and oscilloscopes lay them out. */
class TableFormatsTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"time,v\n0,1\n2,3\n", "time;v\n0;1\n2;3\n", "time\tv\n0\t1\n2\t3\n", "time v\n0 1\n2 3\n"})
    void anyCommonDelimiter(String text) {
        assertThat(rows(text, "v")).containsExactly(new double[] {0, 1}, new double[] {2, 3});
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "time,v\r0,1\r2,3\r",
                "time,v\r\n0,1\r\n2,3\r\n",
                "time,v\n0,1\n2,3",
                "\n\ntime,v\n\n0,1\n\n2,3\n\n",
                "time, v\n0, 1\n2, 3\n",
                "  time   v  \n  0   1  \n  2   3  \n",
                "time\t v\n 0\t 1\n 2\t 3\n",
                "time,v,\n0,1,\n2,3,\n",
                "time,v\n0,1,\n2,3,\n",
                "time,v,,\n0,1\n2,3\n",
                "\"time\",\"v\"\n\"0\",\"1\"\n\"2\",\"3\"\n",
                "% time v\n0 1\n2 3\n",
                "// made by hand\ntime v\n0 1\n2 3\n",
            })
    void lineEndsBlanksAndQuotesDoNotMatter(String text) {
        assertThat(rows(text, "v")).containsExactly(new double[] {0, 1}, new double[] {2, 3});
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "x-axis,1,2\\nsecond,Volt,Volt\\n-5e-3,4,5\\n-4e-3,4,6\\n | 2 | -5e-3 | 5",
                "Time,Channel A,Channel B\\n(ms),(V),(mV)\\n\\n-5.0,4,5\\n-4.0,4,6\\n | Channel B | -5e-3 | 5e-3",
                "Time (us),U_bus [kV]\\n-5.0,0.5\\n-4.0,0.6\\n | U_bus | -5e-6 | 500",
                "Time(s),CH1(V)\\n-5.0,0.5\\n-4.0,0.6\\n | CH1 | -5 | 0.5",
                "t_ns,v_drain\\n-5.0,0.5\\n-4.0,0.6\\n | v_drain | -5e-9 | 0.5",
                "Source,CH1\\nSecond,Volt\\n-5.0,0.5\\n-4.0,0.6\\n | CH1 | -5 | 0.5",
                "Record Length,Analog:2\\nSample Interval,1\\nSecond,Value\\n-5,2\\n-4,3\\n | value | -5 | 2",
                "time,v(ms),i(ma)\\n1,2,3\\n2,3,4\\n | v(ms) | 1 | 2",
                "X,CH1,Start,Increment,\\nSequence,Volt,-6e-3,1e-3\\n1,2,,\\n2,3,,\\n | CH1 | -5e-3 | 2",
                "Sample,Time,CH1\\n0,-5,2\\n1,-4,3\\n | ch1 | -5 | 2",
            })
    void titlesAndUnitsOfInstruments(String text, String name, double time, double value) {
        List<double[]> rows = rows(text.replace("\\n", "\n"), name);
        assertThat(rows).hasSize(2);
        assertThat(rows.get(0)[0]).isCloseTo(time, org.assertj.core.api.Assertions.withinPercentage(1e-12));
        assertThat(rows.get(0)[1]).isCloseTo(value, org.assertj.core.api.Assertions.withinPercentage(1e-12));
    }

    @Test
    void timeInAnUnknownUnitIsRefusedAndAnIndexIsNoUnit() {
        assertThatThrownBy(() -> rows("Time (min),v\n0,1\n1,2\n", "v"))
                .hasMessage("wave.txt: the unit of time 'min' is not known; write s, ms, us or ns");
        assertThat(rows("time,v_min,v_C,i_mA\n0,1,2,3\n1,2,3,4\n", "v_min", "v_C", "i")
                        .get(0))
                .containsExactly(0, 1, 2, 3e-3);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Iac[mA]",
                "I1(mA)",
                "I(mA)",
                "Current (milliamps)",
                "Current (milliamperes)",
                "Current (ma)",
                "CURRENT (MA)",
                "Current(ma)",
                "Current mA",
                "\"Current, mA\"",
                "Current <mA>",
                "Current {mA}",
                "Current-mA",
                "ImA",
                "Current (mA) CH2",
                "Current (mA pk)",
                "Current (mA rms)",
                "current_ma",
                "CH1 in mA",
                "i / mA",
                "i(v1)_mA",
                "mA",
                "(mA)",
                "[mA]"
            })
    void currentInMilliamperesHoweverItIsWritten(String title) {
        assertThat(unit(title)).isEqualTo(1e-3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"current sense mV", "lamp_mV", "lamp mV"})
    void aPrefixCountsWhateverALongNameSays(String title) {
        assertThat(unit(title)).isEqualTo(1e-3);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "v_kv",
                "voltage [kv]",
                "Vin(kV)",
                "Voltage (kilovolts)",
                "U kV",
                "U / kV",
                "UkV",
                "v(out)_kV",
                "kV"
            })
    void voltageInKilovoltsHoweverItIsWritten(String title) {
        assertThat(unit(title)).isEqualTo(1e3);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "v(ms)",
                "V(ka)",
                "V(mA)",
                "i(ma)",
                "I(MA)",
                "V(A)-V(B)",
                "v_ms",
                "v(out)_ma",
                "v(out)_ms",
                "i(x)_us",
                "i(x)_mv",
                "lamp_us",
                "x(y)_ms",
                "Channel A",
                "Lamp A",
                "Phase-A",
                "Bus[7]",
                "v_C",
                "us",
                "ma"
            })
    void nodesElementsChannelsAndIndicesAreNoUnits(String title) {
        WaveformFile file = open("t,b," + title + "\n0,0,1\n1,0,2\n", ReadOptions.NONE);
        assertThat(file.signal(title).name()).isEqualTo(title);
        assertThat(file.signal(title).factor()).isEqualTo(1);
        assertThat(file.rows(List.of(), Recorded.sink(new ArrayList<>())).remarks())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"(s),(V),(mAmps)", "sec,Volt,milliAmp", "s,V,ma", "ms,V,mA", "in s,in V,in mA"})
    void unitsWithoutNamesAboveThemStillCount(String units) {
        List<Signal> signals =
                open(units + "\n0,1,2\n1,2,3\n", ReadOptions.NONE).signals();
        assertThat(signals).extracting(Signal::factor).containsExactly(1.0, 1e-3);
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t", " "})
    void unitsAboveTheNamesCount(String mark) {
        for (String head : List.of("ms,V,mA\ntime,voltage,i\n", "# [ms],[V],[mA]\n\n# t,v,i\n")) {
            String text = (head + "0,1,2\n1,2,3\n").replace(",", mark);
            assertThat(rows(text, "i").get(1)).containsExactly(1e-3, 3e-3);
        }
    }

    @Test
    void unitsBelowTheNamesCountMoreThanALineAbove() {
        assertThat(rows("ms,V,mA\ntime,v,i\ns,V,A\n0,1,2\n1,2,3\n", "i").get(1)).containsExactly(1, 3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Vertical Units,V,mA | mA",
                "Units,V,mA | mA",
                "Y Units,V,[mA] | [mA]",
                "Unit,V,mA | mA",
                "\"VUnit\",\"mV\",\"A\" | mV",
                "# Vertical Units:,mV,mA | mV",
                "Horizontal Units,ms | ms",
            })
    void unitsAmongTheSettingsAreNotReadOver(String units, String unit) {
        assertThatThrownBy(() -> rows("Model,MSO\n" + units + "\nTIME,CH1,CH2\n0,1,2\n1,3,4\n"))
                .hasMessage("wave.txt, line 2: the unit '" + unit + "' stands among the settings and in no title: which"
                        + " numbers are in it is not sure; write the units behind the names, as in 'current (mA)',"
                        + " or take the line out and give the column a gain in --map");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Vertical Units,V,A\nHorizontal Units,s\nTIME,CH1,CH2 (mA)\n",
                "Vertical Units,V,mA\nTIME,CH1,CH2 (mA)\n",
                "Vertical Units,V,mA\nTIME,CH1,CH2\ns,V,mA\n",
                "Sample Interval Units,us\nRate unit,kHz\nTIME,CH1,CH2 (mA)\n",
            })
    void settingsThatAgreeWithTheTitlesOrTellOfTheClockAreNoFault(String head) {
        assertThat(rows(head + "0,1,2\n1,3,4\n", "CH2").get(1)).containsExactly(1, 4e-3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Time,CH1\ns,div\n", "Time (s),CH1 [div]\n", "Time (s),CH1 (div)\n"})
    void unitThatIsNotKnownIsRemarked(String head) {
        ReadResult reading = open(head + "0,4\n1,2\n", ReadOptions.NONE).rows(List.of(), block -> {});
        assertThat(reading.remarks())
                .singleElement()
                .satisfies(remark -> assertThat(remark.text())
                        .startsWith("wave.txt: the unit 'div' of column 'CH1")
                        .endsWith("' is not known, taken as 1"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"TIME,CH1,CH2\nLabel,Mains,Clamp\n", "TIME,CH1,CH2\n(s),(V),(A)\nLabel,Mains,Clamp\n"})
    void labelsOfTheChannelsAreNoUnits(String head) {
        assertThat(rows(head + "0,1,2\n1,3,4\n", "CH2").get(1)).containsExactly(1, 4);
    }

    @Test
    void startAndStepOfACountedRecordAreNoUnits() {
        String text = "X,CH1,Start,Increment,\nSequence,Volt,-6e-3,1e-3\n1,2,,\n2,3,,\n";
        assertThat(open(text, ReadOptions.NONE)
                        .rows(List.of("CH1"), block -> {})
                        .remarks())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "in s, 1",
        "TIME (S), 1",
        "Time (uS), 1e-6",
        "TIME (US), 1e-6",
        "Time (mS), 1e-3",
        "Time (mSec), 1e-3",
        "Time (Secs), 1",
        "Time (sec.), 1",
        "Time ms, 1e-3",
        "t_s, 1",
        "t / us, 1e-6",
        "Time in ms, 1e-3"
    })
    void unitOfTimeHoweverItIsWritten(String title, double second) {
        WaveformFile file = open(title + ",u_V,i / A\n0,1,2\n1,2,3\n", ReadOptions.NONE);
        List<double[]> rows = new ArrayList<>();
        ReadResult reading = file.rows(List.of("u", "i"), Recorded.sink(rows));
        assertThat(rows.get(1)).containsExactly(second, 2, 3);
        assertThat(reading.remarks()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"ms, 1e-3", "milliseconds, 1e-3", "us, 1e-6", "Seconds, 1"})
    void firstTitleThatIsButAUnitOfTimeIsTime(String title, double second) {
        assertThat(rows(title + ",voltage\n0,1\n1,2\n", "voltage").get(1)).containsExactly(second, 2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"x,light\nHz,V\n", "X (Hz),light\n", "X-Axis,Amplitude\nHz,dBm\n", "x [kHz],a\n", "t (V),a\n"})
    void scaleInAnotherUnitThanThatOfTimeIsRefused(String head) {
        assertThatThrownBy(() -> rows(head + "0,1\n1,2\n"))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("not time; give the result of a transient analysis or a capture");
    }

    @Test
    void settingsOfEachChannelAboveTheNamesAreNoRows() {
        String text = """
                Model,MSO
                Horizontal Scale,1e-3,1e-3
                Vertical Scale,100,0.05
                Vertical Offset,0,0
                Threshold Used,1.65,1.65,1.65,1.65
                Probe Attenuation,10,1

                Label,,
                TIME,CH1,CH2
                0,1,2
                1,3,4
                """;
        assertThat(rows(text, "ch2")).extracting(r -> r[1]).containsExactly(2.0, 4.0);
    }

    @Test
    void settingsBesideTheFirstRowsTakeNoRowAway() {
        String text = """
                Record Length,2.500000e+03,,-0.0025,1.2,
                Sample Interval,4.0e-09,,-0.0024,1.3,
                Note,,,-0.0023,1.4,
                ,,,-0.0022,1.5,
                ,,,-0.0021,1.6,
                """;
        assertThat(rows(text, "column 5")).extracting(r -> r[1]).containsExactly(1.2, 1.3, 1.4, 1.5, 1.6);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0,5;1,25 | 0.5 | 1.25",
                "0,5;1.234,5 | 0.5 | 1234.5",
                "0,5;1.234 | 0.5 | 1234",
                "0.5;1.234 | 0.5 | 1.234",
                "0.5;1,234.5 | 0.5 | 1234.5",
                "0.5;1,234 | 0.5 | 1234",
                "1;2 | 1 | 2",
                "1E-3;2,5E+01 | 1E-3 | 25",
            })
    void decimalMarkIsToldByNumbersThatReadOnlyOneWay(String row, double time, double value) {
        assertThat(rows("t;v\n" + row + "\n" + row + "\n", "v").get(1)).containsExactly(time, value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1500;5.10911", "1500;5,10911", "1500;5.1e0\n1501;5.10911"})
    void decimalMarkMayComeBehindManyWholeNumbers(String last) {
        StringBuilder text = new StringBuilder("t;v\n");
        IntStream.range(0, 1500).forEach(k -> text.append(k).append(";0\n"));
        List<double[]> rows = rows(text + last + "\n", "v");
        assertThat(rows.get(rows.size() - 1)[1]).isEqualTo(5.10911);
        assertThat(rows).hasSizeGreaterThan(1500);
    }

    @Test
    void columnThatFillsBehindTheFirstRowsIsLeftOutWithAWord() {
        StringBuilder text = new StringBuilder("t,v,w\n");
        IntStream.range(0, 1500).forEach(k -> text.append(k).append(k < 1200 ? ",5,\n" : ",5,7\n"));
        ReadResult reading = open(text.toString(), ReadOptions.NONE).rows(List.of("v"), block -> {});
        assertThat(reading.rows()).isEqualTo(1500);
        assertThat(reading.remarks())
                .containsExactly(Remark.note("wave.txt, line 1202: column 3 is empty until here, left out"));
    }

    @Test
    void numberThatReadsTwoWaysIsAskedAbout() {
        String text = "t;v\n1;1.000\n2;2.000\n";
        assertThatThrownBy(() -> rows(text, "v")).isInstanceOf(UserFault.class);
        assertThat(rows(text, ReadOptions.NONE.with(ReadOptions.Decimal.POINT), "v")
                        .get(0))
                .containsExactly(1, 1);
        assertThat(rows(text, ReadOptions.NONE.with(ReadOptions.Decimal.COMMA), "v")
                        .get(0))
                .containsExactly(1, 1000);
        assertThat(rows("t,v\n1,1.000\n2,2.000\n", "v").get(0)).containsExactly(1, 1);
    }

    @Test
    void quotedCellsMayHoldDecimalCommas() {
        assertThat(rows("\"t\",\"u,v\"\n\"0,5\",\"1,25\"\n\"0,6\",\"1,5\"\n", "u,v"))
                .containsExactly(new double[] {0.5, 1.25}, new double[] {0.6, 1.5});
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "hello",
                "1\n2\n3\n",
                "time v\n",
                "a b c\nd e f\n",
                "<html><body>no</body></html>",
                "0,5 1,5\n1,5 2\n",
                "\u0000\u0001\u0002"
            })
    void anythingElseIsNotRecognised(String text) {
        assertThatThrownBy(() -> rows(text, "v"))
                .hasMessage("wave.txt: no table of numbers and no raw file was recognised;"
                        + " give a table with a time column and at least one signal, or a SPICE raw file");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time,v\\n0,1\\n1,nan\\n2,3\\n | wave.txt, line 3: column 'v' is not finite (nan)",
                "time,v\\n0,1\\n1,-inf\\n2,3\\n | wave.txt, line 3: column 'v' is not finite (-inf)",
                "time,v\\n0,1\\n1,1.#QNAN\\n2,3\\n | wave.txt, line 3: column 'v' is not finite (1.#QNAN)",
                "time,v\\n0,1\\n1,1e999\\n2,3\\n | wave.txt, line 3: column 'v' is not finite (Infinity)",
                "time,v\\nnan,1\\n1,1\\n2,3\\n | wave.txt, line 2: column 'time' is not finite (nan)",
            })
    void notFiniteIsAFault(String text, String message) {
        assertThatThrownBy(() -> rows(text.replace("\\n", "\n"), "v"))
                .hasMessage(message + "; look into the simulator's log");
    }

    @ParameterizedTest
    @ValueSource(strings = {"9.9E+37", "-9.9E+37", "9.91E+37"})
    void marksOfAnInstrumentForASampleOverItsRangeAreNoValues(String mark) {
        assertThatThrownBy(() -> rows("Time (s),CH1 (mV)\n0,1\n1," + mark + "\n2,3\n", "CH1"))
                .isInstanceOf(UserFault.class)
                .hasMessage("wave.txt, line 3: column 'CH1' is over-range (" + mark.replace("+", "")
                        + "); take the record again with a larger range of the instrument");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time,v\\n0,1\\n1,\\n2,3\\n | wave.txt, line 3: '' in column 'v' is not a number",
                "time,v\\n0,1\\n1,0x1p3\\n2,3\\n | wave.txt, line 3: '0x1p3' in column 'v' is not a number",
                "time,v\\n0,1\\n1,2.5f\\n2,3\\n | wave.txt, line 3: '2.5f' in column 'v' is not a number",
                "time,v\\n0,1\\n1,2.5.1\\n2,3\\n | wave.txt, line 3: '2.5.1' in column 'v' is not a number",
                "time,v\\n0,1\\n1,2 5\\n2,3\\n | wave.txt, line 3: '2 5' in column 'v' is not a number",
                "time,v\\n0,1\\n1\\n2,3\\n | wave.txt, line 3: 1 fields where 2 are expected",
                "time,v\\n0,1\\n1,2,3\\n2,3\\n | wave.txt, line 3: 3 fields where 2 are expected",
                "time,v\\n0,1,9\\n1,2\\n2,3\\n | wave.txt, line 2: 3 fields where 2 are expected",
                "time,v\\n0,1\\n# note\\n2,3\\n | wave.txt, line 3: 1 fields where 2 are expected",
            })
    void damageInTheMiddleIsAFault(String text, String message) {
        assertThatThrownBy(() -> rows(text.replace("\\n", "\n"), "v")).hasMessage(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.5e-05,3 | 1 | 2 fields where 3 are expected",
                "1.5e-05,3.0,\\n | 1 | '' in column 'i' is not a number",
                "1.5e-05,3.0,1.0e- | 1 | '1.0e-' in column 'i' is not a number",
                "1.5e-05,3.0,1.0e-0 | 1 | last number cut short",
                "1.5e-05,3.0,1 | 1 | last number cut short",
                "1.5e-05,3.0,1.0e-02 | 0 | ",
                "1.5e-05,3.0,-1.0e-02 | 0 | ",
            })
    void lastRowMayBeTorn(String last, int torn, String how) {
        String text = "time,v,i\n0.0e+00,1.0,1.0e-02\n1.0e-05,2.0,1.5e-02\n" + last.replace("\\n", "\n");
        ReadResult reading = open(text, ReadOptions.NONE).rows(List.of("v", "i"), block -> {});
        assertThat(reading.rows()).isEqualTo(3 - torn);
        assertThat(reading.remarks())
                .isEqualTo(
                        torn == 0
                                ? List.of()
                                : List.of(Remark.defect(
                                        "wave.txt, line 4: " + how + ": torn last row, file incomplete")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "# end of data\n",
                "End of file",
                "Mean,1.0,1.25e-02\nMax,2.0,1.50e-02\n",
                ",,\n,,\n\n,,\n",
            })
    void linesBehindTheLastRowThatAreNoRowsAreLeftOutWithAWord(String behind) {
        for (String mark : List.of(",", ";")) {
            String table = "time,v,i\n0.0e+00,1.0,1.0e-02\n1.0e-05,2.0,1.5e-02\n".replace(",", mark);
            String lines = behind.replace(",", mark);
            ReadResult reading = open(table + lines, ReadOptions.NONE).rows(List.of("v", "i"), block -> {});
            assertThat(reading.rows()).isEqualTo(2);
            assertThat(reading.remarks())
                    .containsExactly(Remark.note("wave.txt, line 4: no row of numbers from here on, left out"));
            assertThatThrownBy(() -> rows(table + lines.strip() + "\n2e-5;1;2\n".replace(";", mark), "v"))
                    .isInstanceOf(UserFault.class)
                    .hasMessageContaining("line 4");
        }
    }

    @Test
    void aClosingLineThatRanIntoARowIsDamage() {
        assertThatThrownBy(() -> rows("time v\n0 1\n1e-6 2\nEnd of run 2e-6 3\n", "v"))
                .isInstanceOf(UserFault.class)
                .hasMessage("wave.txt, line 4: 5 fields where 2 are expected");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "t,i\n0,8.5e-05\n1,0.0123\n2,8.31245",
                "t,n\n0,-7\n1,321\n2,-32",
                "t;i\n0;0,5\n1;0,0123\n2;8,31",
                "t i\n0 8.5e-05\n1 0.0123\n2 8.31245",
                "\"t\",\"i\"\n0,0.5\n1,0.0123\n2,8.31",
            })
    void lastNumberWithoutALineEndIsNotUsedWhereWidthsVary(String text) {
        ReadResult reading = open(text, ReadOptions.NONE).rows(List.of(), block -> {});
        assertThat(reading.rows()).isEqualTo(2);
        assertThat(reading.remarks())
                .containsExactly(Remark.note("wave.txt, line 4: the last line has no end, its last number may be cut"
                        + " short: row left out"));
        assertThat(open(text + "\n", ReadOptions.NONE)
                        .rows(List.of(), block -> {})
                        .rows())
                .isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "t,i\\n0,8.5000\\n1,-10.0123\\n2,108.3124 | 3 | true",
                "t,i\\n0,8.5000\\n1,-10.0123\\n2,108.31 | 2 | false",
                "t;i\\n0;8,50\\n1;-10,01\\n2;108,31 | 3 | true",
            })
    void lastNumberWithoutALineEndIsJudgedByItsDecimalsWhereTheyAreFixed(String text, int count, boolean sound) {
        ReadResult reading = open(text.replace("\\n", "\n"), ReadOptions.NONE).rows(List.of(), block -> {});
        assertThat(reading.rows()).isEqualTo(count);
        assertThat(reading.sound()).isEqualTo(sound);
    }

    @ParameterizedTest
    @ValueSource(strings = {"t,v,i\n0,1,2\n1,3,4\n", "t;v;i\n0;1,0;2\n1;3;4\n", "0.0 1 2\n1.0 3 4\n"})
    void severalSignalsMayBeTakenFromOneColumn(String text) {
        WaveformFile file = open(text, ReadOptions.NONE);
        Signal v = file.signals().get(0);
        Signal i = file.signals().get(1);
        List<double[]> rows = new ArrayList<>();
        file.stream(List.of(v, i, v, i), Recorded.sink(rows));
        assertThat(rows).containsExactly(new double[] {0, 1, 2, 1, 2}, new double[] {1, 3, 4, 3, 4});
    }

    @Test
    void steppedRunsNeedAChoice() {
        String text = "TIME,V(OUT)\n0,1\n1,2\n2,3\n0,4\n1,5\n";
        assertThatThrownBy(() -> rows(text, "v(out)"))
                .hasMessage("wave.txt, line 5: time goes back from 2 s to 0 s: a second run starts here;"
                        + " say which one to read with --run");
        assertThat(rows(text, ReadOptions.NONE.withRun(2), "v(out)"))
                .extracting(r -> r[1])
                .containsExactly(4.0, 5.0);
        assertThat(rows(text, ReadOptions.NONE.withRun(1), "v(out)")).hasSize(3);
        assertThatThrownBy(() -> rows(text, ReadOptions.NONE.withRun(3), "v(out)"))
                .hasMessage("wave.txt: run 3 was asked for, the file holds 2");
    }

    @Test
    void steppedPrintFileHasNoTrailer() {
        String text = "Index TIME V(OUT)\n0 0 1\n1 1 2\n0 0 4\n1 1 5\n";
        ReadResult reading = open(text, ReadOptions.NONE.withRun(2)).rows(List.of(), block -> {});
        assertThat(reading.remarks()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 0 0 325\n1e-5 1 2e-5 324\n3e-5 1 4e-5 320\n",
                "0 0 0 325 0 1\n1e-5 1 1e-5 324 2e-5 1\n3e-5 1 3e-5 320 4e-5 1\n",
                "time v(a) time v(b)\n0 0 0 325\n1e-5 1 2e-5 324\n",
                "Time,v(a),Time.1,CH2\n0,0,0,325\n1,1,2,324\n",
                "Time CH1,v(a),Time CH2,CH2\n0,0,0,325\n1,1,2,324\n",
                "CH1 Time,v(a),CH2 Time,CH2\n0,0,0,325\n1,1,2,324\n",
                "0 0 1e-6 325\n1e-5 1 1.1e-5 324\n3e-5 1 3.1e-5 320\n",
            })
    void copiesOfTheTimeColumnThatDifferAreTwoPlots(String text) {
        assertThatThrownBy(() -> rows(text, "column 2".equals(text) ? "" : first(text)))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("the copies of the time column differ: two plots were mixed");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Time,a,Time.1,b\n0,1,0,2\n1,3,1,4\n",
                "Time CH1,a,Time CH2,b\n0,1,0,2\n1,3,1,4\n",
            })
    void timeOfEachChannelThatIsOneTimeIsNoSignal(String text) {
        assertThat(open(text, ReadOptions.NONE).signals())
                .extracting(Signal::name)
                .containsExactly("a", "b");
        assertThat(rows(text, "b").get(1)).containsExactly(1, 4);
    }

    @ParameterizedTest
    @ValueSource(strings = {"t,t1", "time,on-time", "Time,Time to trip", "x,x2", "time,Time CH1"})
    void signalsThatAreNamedLikeTimeStaySignals(String head) {
        assertThat(rows(head + "\n0,5\n1,7\n2,6\n", head.substring(head.indexOf(',') + 1))
                        .get(2))
                .containsExactly(2, 6);
    }

    @Test
    void namesThatWereAskedForMustFitTheColumns() {
        assertThatThrownBy(() -> open("0 1 2\n1 2 3\n", ReadOptions.named(List.of("a", "b", "c"))))
                .hasMessage("wave.txt: 3 names were asked for, the table has 2 signals");
    }

    @Test
    void signalThatIsNotThereIsNamedBesideThoseThatAre() {
        assertThatThrownBy(() -> rows("time v(a) v(b)\n0 1 2\n1 2 3\n", "v(c)"))
                .hasMessage("wave.txt: no such signal, found 'v(c)', allowed: v(a), v(b)");
        assertThatThrownBy(() -> rows("time v(a) v(a)\n0 1 2\n1 2 3\n", "v(a)"))
                .hasMessage("wave.txt: the signal 'v(a)' stands in it 2 times, in column 2 and column 3;"
                        + " write it once, or give its column as its name");
    }

    @Test
    void signalsOfOneNameAreToldApartByTheirColumns() {
        assertThat(rows("Second,Value,Value\n0,1,2\n1,3,4\n", "column 3", "column 2")
                        .get(1))
                .containsExactly(1, 4, 3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"v-sweep v(out)\n0 1\n1 2\n", "frequency v(out)\n1 1\n10 2\n"})
    void sweepsAreNoTransientRecord(String text) {
        assertThatThrownBy(() -> rows(text, "v(out)")).hasMessageContaining("not time");
    }

    @Test
    void fileLeftFromAnEarlierRunIsRefused() throws IOException {
        Path deck = Files.writeString(folder.resolve("mains.cir"), "* deck\n");
        WaveformFile file = open("time v\n0 1\n1 2\n", ReadOptions.NONE);
        Files.setLastModifiedTime(folder.resolve("wave.txt"), java.nio.file.attribute.FileTime.fromMillis(1_000_000));
        assertThatThrownBy(() -> file.requireNewerThan(deck))
                .hasMessage("wave.txt: is older than mains.cir: left from an earlier run; run it again");
        Files.setLastModifiedTime(deck, java.nio.file.attribute.FileTime.fromMillis(900_000));
        assertThat(file.requireNewerThan(deck)).isSameAs(file);
    }

    @Test
    void microSignsOfAnyEncodingAreRead() throws IOException {
        for (var charset : List.of(StandardCharsets.UTF_8, StandardCharsets.ISO_8859_1)) {
            Path path = Files.write(folder.resolve("wave.txt"), "Time (µs),v\n1,2\n2,3\n".getBytes(charset));
            assertThat(Recorded.rows(WaveformFile.open(path), "v").get(0)[0]).isEqualTo(1e-6);
        }
    }

    private double unit(String title) {
        List<Signal> signals =
                open("t,b," + title + "\n0,0,1\n1,0,2\n", ReadOptions.NONE).signals();
        return signals.get(1).factor();
    }

    private static String first(String text) {
        return text.contains("v(a)") ? "v(a)" : "column 2";
    }

    private List<double[]> rows(String text, String... names) {
        return rows(text, ReadOptions.NONE, names);
    }

    private List<double[]> rows(String text, ReadOptions options, String... names) {
        return Recorded.rows(open(text, options), names);
    }

    private WaveformFile open(String text, ReadOptions options) {
        try {
            return WaveformFile.open(Files.writeString(folder.resolve("wave.txt"), text), options);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
