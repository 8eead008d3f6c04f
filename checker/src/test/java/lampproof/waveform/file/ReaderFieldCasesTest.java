package lampproof.waveform.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lampproof.fault.UserFault;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Remark;
import lampproof.waveform.Signal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What engineers stumble over when they read simulator output. */
class ReaderFieldCasesTest {

    @TempDir
    Path folder;

    private final List<double[]> rows = new ArrayList<>();

    @Test
    void repeatedTimeColumnsAreNoSignals() {
        WaveformFile file = open("""
                 0.00000000e+00  0.00000000e+00  0.00000000e+00  3.25000000e+02  0.00000000e+00 -1.20000000e-02
                 1.00000000e-05  1.00000000e+00  1.00000000e-05  3.24000000e+02  1.00000000e-05 -1.10000000e-02
                 3.00000000e-05  1.00000000e+00  3.00000000e-05  3.20000000e+02  3.00000000e-05 -1.00000000e-02
                """, ReadOptions.named(List.of("gate", "bus", "i(v1)")));
        read(file, "bus", "i(v1)");
        assertThat(rows).extracting(r -> r[1]).containsExactly(325.0, 324.0, 320.0);
        assertThat(rows).extracting(r -> r[2]).containsExactly(-0.012, -0.011, -0.010);
        assertThat(file.format())
                .isEqualTo("table with blanks between the columns, no names, time repeated in front of each signal,"
                        + " 3 signals");
    }

    @Test
    void repeatedNamesAndTheirLetterCaseDoNotMatter() {
        WaveformFile file = open("""
                 time            v(sw)           time            i(Vmeas)
                 0.00000000e+00  0.00000000e+00  0.00000000e+00  1.00000000e-01
                 2.00000000e-06  3.00000000e+02  2.00000000e-06  2.00000000e-01
                """, ReadOptions.NONE);
        assertThat(file.signals()).extracting(Signal::name).containsExactly("v(sw)", "i(Vmeas)");
        read(file, "V( SW )", "i(vmeas)");
        assertThat(rows.get(1)).containsExactly(2e-6, 300, 0.2);
    }

    @Test
    void frequencyScaleIsRefused() {
        fails(
                """
                 frequency       v(out)          v(out)          vdb(out)
                 1.00000000e+05  7.16956800e-01 -4.50477243e-01 -1.44507012e+00
                """,
                "wave.txt: the scale is frequency, not time; v(out) is complex (first 0.846733 at"
                        + " -32.1419 deg); give the result of a transient analysis or a capture");
    }

    @Test
    void tornLastRowIsNotUsedAndSpoilsTheFile() {
        ReadResult reading =
                read(open("time,v(bus),i(led)\n0.0,320.0,0.060\n1.0e-5,321.0,0.061\n2.0e-5,32\n", ReadOptions.NONE));
        assertThat(reading.rows()).isEqualTo(2);
        assertThat(reading.sound()).isFalse();
        assertThatThrownBy(reading::requireSound)
                .isInstanceOf(UserFault.class)
                .hasMessage("wave.txt, line 4: 2 fields where 3 are expected: torn last row, file incomplete");
    }

    @Test
    void commaInsideBracketsBelongsToTheName() {
        WaveformFile file = open(
                "TIME,V(SW,LEDN),{V(A)*I(V1)},I(L1)\n0.0,100.0,-3.0,0.20\n1.0e-6,140.0,-5.0,0.30\n", ReadOptions.NONE);
        assertThat(file.signals()).extracting(Signal::name).containsExactly("V(SW,LEDN)", "{V(A)*I(V1)}", "I(L1)");
        fails(
                "TIME,V(SW,LEDN,I(L1)\n0.0,100.0,-3.0\n1,2,3\n",
                "wave.txt, line 1: 2 names stand above 3 columns;"
                        + " one name per column, names with a comma in quotes or brackets");
    }

    @Test
    void indexAndTrailerAreNoData() {
        String table = """
                Index       TIME             V(OUT)
                0     0.00000000e+00    0.00000000e+00
                1     1.00000000e-06    2.00000000e+00
                2     4.00000000e-06    2.00000000e+00
                """;
        WaveformFile file = open(table + "End of Xyce(TM) Simulation\n", ReadOptions.NONE);
        assertThat(read(file, "v(out)").sound()).isTrue();
        assertThat(rows).hasSize(3);
        assertThat(file.signals()).extracting(Signal::name).containsExactly("V(OUT)");
        assertThat(read(open(table, ReadOptions.NONE)).remarks())
                .containsExactly(Remark.defect("wave.txt: the closing line of the simulator is missing: run aborted?"));
    }

    @Test
    void tooFewDigitsOfTimeAreNoticed() {
        ReadResult reading = read(open(
                "time,v(sw)\n1.0000e-02,0\n1.0000e-02,300\n1.0000e-02,300\n1.0010e-02,300\n1.0010e-02,0\n",
                ReadOptions.NONE));
        assertThat(reading.remarks())
                .containsExactly(Remark.note("wave.txt, line 4: 3 points share the time 10 ms:"
                        + " time has too few digits, its resolution is 10 µs"));
    }

    @Test
    void equalTimesAreAnEdgeAndBackwardTimesAFault() {
        fails(
                "time,v\n0,0\n1e-6,5\n1e-6,10\n2e-6,10\n1.5e-6,3\n3e-6,10\n",
                "wave.txt, line 6: time goes back from 2 µs to 1.5 µs");
        assertThat(read(open("time,v\n0,0\n1e-6,5\n1e-6,10\n2e-6,10\n3e-6,10\n", ReadOptions.NONE))
                        .rows())
                .isEqualTo(5);
    }

    @Test
    void semicolonsWithDecimalCommas() {
        WaveformFile file = open("""
                Zeit;U_LED;I_LED
                0,00E+00;1,52E+02;6,10E-02
                1,00E-05;1,54E+02;6,30E-02
                3,00E-05;1,54E+02;6,30E-02
                """, ReadOptions.NONE);
        read(file, "I_LED");
        assertThat(rows).extracting(r -> r[1]).containsExactly(0.061, 0.063, 0.063);
        assertThat(rows.get(2)[0]).isEqualTo(3e-5);
        fails(
                "t;v\n1;1.000\n2;2.000\n",
                "wave.txt, line 2: '1.000' may be written with a decimal point or a decimal comma; say which with --decimal");
        read(open("t;v\n1;1.234,5\n2;2.000\n", ReadOptions.NONE), "v");
        assertThat(rows).extracting(r -> r[1]).containsExactly(1234.5, 2000.0);
    }

    @Test
    void byteOrderMarkAndTwoByteTextAreRead() throws IOException {
        String text = "time,v(out)\r\n0,1\r\n2e-6,3\r\n";
        for (byte[] bytes : List.of(
                ("\ufeff" + text).getBytes(StandardCharsets.UTF_8),
                ("\ufeff" + text).getBytes(StandardCharsets.UTF_16LE),
                text.getBytes(StandardCharsets.UTF_16LE),
                ("\ufeff" + text).getBytes(StandardCharsets.UTF_16BE))) {
            Path path = Files.write(folder.resolve("wave.txt"), bytes);
            read(WaveformFile.open(path), "v(out)");
            assertThat(rows).containsExactly(new double[] {0, 1}, new double[] {2e-6, 3});
        }
    }

    @Test
    void abortedRunIsToldByItsLastTime() {
        ReadResult reading = read(open(" time v(b)\n 4.99e-05 2.495\n 5.00e-05 2.500\n", ReadOptions.NONE), "v(b)");
        assertThatThrownBy(() -> reading.requireReached(100e-6, "node b"))
                .hasMessage("wave.txt: incomplete, stopped at 50.0 µs of 100 µs (50.0 %), node b");
        assertThat(reading.requireReached(50e-6, "")).isSameAs(reading);
    }

    @Test
    void preambleIsSkippedAndNoRowIsLost() {
        WaveformFile file = open("""
                #Scope acquisition
                #Serial Number: X000

                Time (s),Channel 1 (V)
                0.000,4.0
                0.001,2.0
                0.002,2.0
                0.004,2.0
                """, ReadOptions.NONE);
        assertThat(read(file, "channel1").rows()).isEqualTo(4);
        WaveformFile bare = open("0.000,4.0\n0.001,2.0\n0.002,2.0\n0.004,2.0\n", ReadOptions.NONE);
        assertThat(read(bare, "column 2").rows()).isEqualTo(4);
    }

    @Test
    void timesThatAreWrittenDifferentlyAreStillCopies() {
        WaveformFile file = open(" 0.000e+00 1 0.0 325\n 1.00e-05 1 1e-5 324\n 3e-5 1 3.0e-05 320\n", ReadOptions.NONE);
        assertThat(file.signals()).extracting(Signal::name).containsExactly("column 2", "column 4");
        read(file, "column 4");
        assertThat(rows).extracting(r -> r[1]).containsExactly(325.0, 324.0, 320.0);
    }

    @Test
    void rowNumbersThatJumpTellOfMissingRows() {
        String table = "Index TIME V(OUT)\n0 0.0 0.0\n1 1e-6 2.0\n2 4e-6 2.0\n5 5e-6 1.0\n";
        fails(
                table + "End of Xyce(TM) Simulation\n",
                "wave.txt, line 5: the row number goes from 2 to 5: rows are missing");
        fails(
                "No.,Time,U\n10,0,1\n20,1,1\n30,2,1\n50,3,1\n",
                "wave.txt, line 5: the row number goes from 30 to 50: rows are missing");
    }

    @Test
    void aClosingLineThatIsCutIsNone() {
        fails(
                "Index TIME V(OUT)\n0 0.0 0.0\n1 1e-6 2.0\nEnd of Xyce(TM) Sim",
                "wave.txt, line 4: 4 fields where 3 are expected");
    }

    @Test
    void withoutNamesARunningNumberIsNotTakenAsTime() {
        fails(
                "0 0.0 0.0\n1 1e-6 2.0\n2 4e-6 2.0\n",
                "wave.txt: the first column counts the rows and the second rises: which of them is time cannot be identified;"
                        + " put names above the columns, 'time' above the time");
        assertThat(read(open("0 5\n1 6\n2 7\n", ReadOptions.NONE), "column 2").rows())
                .isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Index TIME -6 2.0\nEnd of Xyce(TM) Simu6 2.0\n2 4e-6 2.0\n3 5e-6 2.0\n",
                "Index;-6 2.0\n2 4e-6 2.0\nEnd of Xyce(TM) Simulation\n",
                "time,0,320.0.061\n3e-5,323,0.06\n",
                "Zeit;U,00E-05;1,54E+02-02\n3,00E-05;1,5E+02;6,3E-02\n",
                "Zei1(52E+02;6,10E-02\n1,00E-05;1,54E+02;6,30E-02\n3,00E-05;1,5E+02;6,3E-02\n"
            })
    void aHeadDamagedInAnyWayIsNotFreeText(String text) {
        assertThatThrownBy(() -> open(text, ReadOptions.NONE)).isInstanceOf(UserFault.class);
    }

    @Test
    void aTableWithoutTimeIsRefused() {
        fails(
                "Index V1 V(OUT)\n0 0.0 1\n1 0.5 2\nEnd of Xyce(TM) Simulation\n",
                "wave.txt: no time column among [Index, V1, V(OUT)]; write 'time' above the column that is time");
        fails(
                "TEMP,V(A)\n0,1\n10,2\n",
                "wave.txt: no time column among [TEMP, V(A)]; write 'time' above the column that is time");
    }

    @Test
    void aUnitOfTimeThatIsNotKnownIsNotTakenAsSeconds() {
        fails("Time,CH1\nmin,V\n0,4\n1,2\n", "wave.txt: the unit of time 'min' is not known; write s, ms, us or ns");
        assertThat(open("Time,CH1\ns,div\n0,4\n1,2\n", ReadOptions.NONE).signals())
                .extracting(Signal::name)
                .containsExactly("CH1");
    }

    @Test
    void aLineThatIsNeitherRowNorNamesIsQuoted() {
        fails(
                "time,v\n0,1 V\n1,2\n2,3\n",
                "wave.txt, line 2: '0,1 V' is neither a row of numbers nor a line of names; correct or delete it");
    }

    @Test
    void aDirectoryAndAPackedFileThatHoldsNothingAreToldForWhatTheyAre() throws IOException {
        assertThatThrownBy(() -> WaveformFile.open(folder))
                .hasMessageEndingWith(": is a directory or a device, not a file");
        Path packed = Files.write(folder.resolve("wave.gz"), new byte[] {0x1f, (byte) 0x8b, 8});
        assertThatThrownBy(() -> WaveformFile.open(packed))
                .hasMessage("wave.gz: ends before its first line; write or copy it again");
    }

    @Test
    void aRecordOfOneInstantIsRefused() {
        fails("time,v\n0.01,0\n0.01,1\n0.01,2\n", "wave.txt: all 3 points share the time 10 ms");
    }

    private WaveformFile open(String text, ReadOptions options) {
        try {
            return WaveformFile.open(Files.writeString(folder.resolve("wave.txt"), text), options);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private ReadResult read(WaveformFile file, String... names) {
        rows.clear();
        return file.rows(List.of(names), Recorded.sink(rows));
    }

    private void fails(String text, String message) {
        assertThatThrownBy(() -> {
                    WaveformFile file = open(text, ReadOptions.NONE);
                    read(file, file.signals().stream().map(Signal::name).toArray(String[]::new));
                })
                .isInstanceOf(UserFault.class)
                .hasMessage(message);
    }
}
