package lampproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPOutputStream;
import lampproof.fault.UserFault;
import lampproof.simulator.Simulator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommandsTest {

    private static final String SPEC = """
            quantity,min,typ,max,unit,note
            driver.topology,,step-up,,,
            line.voltage,,230,,V,
            line.frequency,,50,,Hz,
            string.voltage,,420,,V,
            string.current,,16.7,,mA,
            """;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private Path spec;
    private Path run;

    @BeforeEach
    void writeSpec() throws IOException {
        spec = Files.writeString(folder.resolve("lamp.csv"), SPEC);
        run = folder.resolve("run");
    }

    @Test
    void everyCommandExplainsItselfWithAnExample() {
        for (String command : List.of(
                "prove", "predict", "deck", "simulate", "check", "dimming", "measure", "figures", "rows", "lint")) {
            out.getBuffer().setLength(0);
            assertThat(run(command, "--help")).isZero();
            assertThat(out.toString())
                    .startsWith("Usage: lampproof " + command)
                    .contains("Example: lampproof " + command);
        }
    }

    @Test
    void theHelpListsEveryCommand() {
        run("--help");
        assertThat(out.toString())
                .contains(
                        "\n  prove",
                        "\n  predict",
                        "\n  deck",
                        "\n  simulate",
                        "\n  check",
                        "\n  dimming",
                        "\n  measure",
                        "\n  figures",
                        "\n  rows",
                        "\n  lint");
    }

    @Test
    void predictAnswersFirstInAtMostTwentyLinesAndThenTellsWhatIsNotKept() {
        assertThat(run("predict", spec.toString())).isZero();
        assertThat(err.toString()).isEmpty();
        List<String> lines = out.toString().lines().toList();
        assertThat(lines.get(0)).startsWith("lamp: step-up, boundary, 230 V 50 Hz, string 420 V 16.7 mA");
        assertThat(lines.indexOf("")).isBetween(10, 20);
        assertThat(lines).hasSizeLessThan(45).allMatch(line -> line.length() <= 100);
        assertThat(out.toString())
                .containsPattern("\n  efficiency of the whole lamp +92\\.\\d %\n")
                .containsPattern("\nrules: \\d+ of \\d+ kept\n")
                .contains(
                        "  NOT KEPT  conducted noise, differential mode order 3 at 210 kHz 69.7 dBuV, at most 63.2 dBuV")
                .doesNotContain("+-");
    }

    @Test
    void predictQuietIsOneLine() {
        assertThat(run("predict", spec.toString(), "--quiet")).isZero();
        assertThat(out.toString()).matches("lamp: rules: \\d+ of \\d+ kept\n");
    }

    @Test
    void predictAllAddsLossesThenFiguresThenRules() {
        assertThat(run("predict", spec.toString(), "--all")).isZero();
        assertThat(out.toString())
                .containsSubsequence(
                        "rules: ", "losses over the line cycle, largest first\n", "\nfigures\n", "  line.power.mean ")
                .contains("\nrules and ratings, by calculation, which is no proof of compliance\n")
                .containsPattern("  NOT KEPT +conducted noise, differential mode +order 3 at 210 kHz .*"
                        + "CISPR 15:2018 \\(from memory\\) and 47 CFR 18.307 \\(a\\), quasi-peak");
    }

    @Test
    void partClassesOfOnesOwnAreInTheBillOfMaterials() throws IOException {
        Path parts = Files.writeString(
                folder.resolve("parts.csv"),
                "part,rating,unit,package,length,width,cost\nfuse,1,1,SMD 1206,3.2,1.6,77\n");
        run("deck", spec.toString(), "-o", run.toString());
        assertThat(run("check", run.toString(), "--parts", parts.toString())).isEqualTo(3);
        assertThat(run.resolve("bom.csv")).content().contains("SMD 1206");
    }

    @Test
    void twoDesignsStandSideBySideWithWhatDiffers() throws IOException {
        Path other = Files.writeString(
                folder.resolve("other.csv"), SPEC.replace("string.voltage,,420", "string.voltage,,400"));
        assertThat(run("compare", spec.toString(), other.toString(), "--all")).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString())
                .containsPattern("\n  string.voltage +420 V +given +400 V +given\n")
                .containsPattern("\n  string.power.mean +mains +7.0\\d+ W +6.7\\d+ W +-4.\\d %\n")
                .containsPattern("\nlamp, rules: \\d+ of \\d+ kept\n")
                .containsPattern("\nother, rules: \\d+ of \\d+ kept\n")
                .containsPattern("\n  board area +[\\d ]+ mm2 +[\\d ]+ mm2\n");
    }

    @Test
    void aDesignDoesNotDifferFromItself() {
        assertThat(run("compare", spec.toString(), spec.toString())).isZero();
        assertThat(out.toString()).contains("The specs do not differ.\n").endsWith("No figure moved.\n");
        out.getBuffer().setLength(0);
        assertThat(run("compare", spec.toString(), spec.toString(), "--quiet")).isZero();
        assertThat(out.toString()).endsWith(": 0 rows differ, 0 figures moved\n");
    }

    @Test
    void anOptionOfOneSpecIsRejectedForTwo() {
        assertThat(run("compare", spec.toString(), spec.toString(), "--prove")).isEqualTo(2);
        assertThat(err.toString()).contains("--prove").contains("give one spec");
    }

    @Test
    void predictWritesATableOrARunFolder() throws IOException {
        Path table = folder.resolve("out.csv");
        assertThat(run("predict", spec.toString(), "-o", table.toString())).isZero();
        assertThat(run("predict", spec.toString(), "-o", run.toString())).isZero();
        assertThat(run.resolve("predictions.csv")).hasSameTextualContentAs(table);
        assertThat(run).isDirectoryNotContaining("glob:**.cir");
    }

    @Test
    void aSpecWithThreeFaultsNamesAllThreeAndWritesNothing() throws IOException {
        Files.writeString(
                spec,
                SPEC.replace("16.7,,mA", "16.7,,mV").replace("420", "4k2").replace("line.frequency", "line.freqency"));
        for (String[] command :
                new String[][] {{"predict", spec.toString()}, {"deck", spec.toString(), "-o", run.toString()}}) {
            err.getBuffer().setLength(0);
            assertThat(run(command)).isEqualTo(2);
            assertThat(err.toString()).contains("mV", "4k2", "line.freqency");
        }
        assertThat(run).doesNotExist();
    }

    @Test
    void deckWritesARunFolderAndSaysWhatIsNext() {
        assertThat(run("deck", spec.toString(), "-o", run.toString())).isZero();
        assertThat(out.toString()).isEqualTo("""
                wrote RUN/crest.cir
                wrote RUN/mains.cir
                Next: lampproof simulate RUN
                """.replace("RUN", run.toString()));
    }

    @Test
    void theDecksThatAreWrittenHaveNoFaultThatTheLinterKnows() {
        run("deck", spec.toString(), "-o", run.toString());
        out.getBuffer().setLength(0);
        assertThat(run("lint", run.toString())).isZero();
        assertThat(out.toString()).isEqualTo("0 errors, 0 warnings\n");
    }

    @Test
    void aDeckWithAFaultIsNotSimulated() throws IOException {
        run("deck", spec.toString(), "-o", run.toString());
        Path crest = run.resolve("crest.cir");
        Files.writeString(crest, Files.readString(crest).replace("\n.end\n", "\n.include /etc/hostname\n.end\n"));
        assertThat(run("lint", run.toString())).isEqualTo(2);
    }

    @Test
    void checkWithoutWaveformsGivesNoVerdict() throws IOException {
        run("deck", spec.toString(), "-o", run.toString());
        assertThat(run("check", run.toString())).isEqualTo(3);
        assertThat(out.toString()).contains("crest.csv: no such file").contains("mains.csv: no such file");
        assertThat(Files.readAllLines(run.resolve("verdict.csv")))
                .hasSizeGreaterThan(50)
                .noneMatch(row -> row.contains(",agrees,") || row.contains(",differs,"));
        assertThat(run.resolve("junit.xml")).content().contains("failures=\"0\"", "no such file");
    }

    @Test
    void checkOfAnUnknownDeckIsTold() {
        run("deck", spec.toString(), "-o", run.toString());
        assertThat(run("check", run.toString(), "--wave", "main=x.csv")).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo("--wave: unknown deck, found 'main', allowed: crest, mains, dimmed, "
                        + "open-string, shorted-string, surge, noise, power-up; did you mean mains?\n");
    }

    /** A run that fails may leave a table that looks complete, or one of the run before. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    Error: no such vector nope | crest.log: the deck requests vector nope, which the circuit does not contain
                    run simulation(s) aborted | crest.log: the run was aborted
                    """)
    void checkGivesNoVerdictOnATableWhoseLogTellsOfAFailure(String line, String reason) throws IOException {
        run("deck", spec.toString(), "-o", run.toString());
        Files.writeString(run.resolve("crest.csv"), "time gate_voltage\n0 1\n1e-3 1\n");
        Files.writeString(run.resolve("crest.log"), line + "\n");
        assertThat(run("check", run.toString(), "--all")).isEqualTo(3);
        assertThat(out.toString()).contains(reason);
    }

    @Test
    void theLogOfAPackedTableIsReadToo() throws IOException {
        run("deck", spec.toString(), "-o", run.toString());
        Path table = run.resolve("crest.csv.gz");
        try (OutputStream packed = new GZIPOutputStream(Files.newOutputStream(table))) {
            packed.write("time gate_voltage\n0 1\n1e-3 1\n".getBytes(StandardCharsets.UTF_8));
        }
        Files.writeString(run.resolve("crest.log"), "run simulation(s) aborted\n");
        assertThat(run("check", run.toString(), "--wave", "crest=" + table)).isEqualTo(3);
        assertThat(out.toString()).contains("crest.log: the run was aborted");
    }

    @Test
    void checkTellsAtWhichNodeACutRunStopped() throws IOException {
        run("deck", spec.toString(), "-o", run.toString());
        Files.writeString(run.resolve("crest.csv"), "time gate_voltage\n0 1\n5e-5 1\n");
        Files.writeString(
                run.resolve("crest.log"),
                "doAnalyses: TRAN:  Timestep too small; time = 5e-05, timestep = 1.25e-18: trouble with node \"b\"\n"
                        + "run simulation(s) aborted\n");
        assertThat(run("check", run.toString(), "--all")).isEqualTo(3);
        assertThat(out.toString())
                .containsPattern(
                        "crest\\.log: timestep too small at node b, stopped at 50\\.0 us of \\d+ us \\([0-9.]+ %\\)");
    }

    /** A deck that was run by hand writes no log: the one that is left tells of another run. */
    @Test
    void aLogThatIsOlderThanTheTableIsNotHeldAgainstIt() throws IOException {
        run("deck", spec.toString(), "-o", run.toString());
        Path log = Files.writeString(run.resolve("crest.log"), "run simulation(s) aborted\n");
        Files.setLastModifiedTime(log, FileTime.fromMillis(0));
        Files.writeString(run.resolve("crest.csv"), "time gate_voltage\n0 1\n5e-5 1\n");
        assertThat(run("check", run.toString())).isEqualTo(3);
        assertThat(out.toString())
                .contains("incomplete: the record ends at 50.0 ")
                .doesNotContain("crest.log");
    }

    @Test
    void aWaveformOlderThanItsDeckIsRemarked() throws IOException {
        run("deck", spec.toString(), "-o", run.toString());
        Path old = Files.writeString(folder.resolve("old.csv"), "time gate_voltage\n0 1\n5e-5 1\n");
        Files.setLastModifiedTime(old, FileTime.fromMillis(1000));
        run("check", run.toString(), "--wave", "crest=" + old);
        assertThat(err.toString()).isEqualTo(old + ": older than crest.cir, so of an earlier deck or of none\n");
    }

    /** By default a simulator writes no names, and the time in front of every vector. */
    @Test
    void aTableWithoutNamesTakesThoseThatTheDeckWrites() throws IOException {
        run("deck", spec.toString(), "-o", run.toString());
        Files.writeString(run.resolve("crest.csv"), ("0 1 ".repeat(15) + "\n") + ("1e-5 1 ".repeat(15) + "\n"));
        run("check", run.toString());
        assertThat(out.toString())
                .contains("incomplete: the record ends at 10.0 ")
                .doesNotContain("no such signal");
    }

    @Test
    void theRunOfATableOfSeveralIsSaidByItsNumber() throws IOException {
        Path table = Files.writeString(folder.resolve("steps.csv"), sine(1) + sine(2).replaceFirst("time.*\n", ""));
        assertThat(run("measure", table.toString())).isEqualTo(3);
        assertThat(run("measure", table.toString(), "--run", "2")).isZero();
        assertThat(out.toString()).containsPattern("line\\.current\\.peak +2\\.000 A");
        assertThat(run("measure", table.toString(), "--run", "0")).isEqualTo(2);
    }

    @Test
    void theDecimalMarkIsSaidWhereATableLeavesItOpen() throws IOException {
        Path table = Files.writeString(
                folder.resolve("open.csv"), "time;line current\n0;1.000\n1;2.000\n2;1.000\n3;2.000\n");
        assertThat(run("measure", table.toString())).isEqualTo(3);
        run("measure", table.toString(), "--decimal", "point");
        assertThat(out.toString()).containsPattern("line\\.current\\.peak +2\\.000 A");
        out.getBuffer().setLength(0);
        run("measure", table.toString(), "--decimal", "comma");
        assertThat(out.toString()).containsPattern("line\\.current\\.peak +2\\.000 kA");
    }

    @Test
    void aTableOfWhichNothingCanBeMeasuredGivesNoVerdict() throws IOException {
        Path table = Files.writeString(folder.resolve("slow.csv"), "time,mains voltage\n0,1\n5e-3,2\n1e-2,1\n");
        assertThat(run("measure", table.toString())).isEqualTo(3);
        assertThat(out.toString()).containsPattern("line\\.voltage\\.rms +none");
    }

    /** Three line periods of a current of a crest [A]. */
    private static String sine(double crest) {
        StringBuilder text = new StringBuilder("time,line current\n");
        for (int k = 0; k <= 600; k++) {
            text.append(String.format(Locale.ROOT, "%.4f,%.9e%n", k * 1e-4, crest * Math.sin(2 * Math.PI * k / 200)));
        }
        return text.toString();
    }

    @Test
    void checkOfAFolderThatIsNoRunIsTold() {
        assertThat(run("check", folder.toString())).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo(folder.resolve("predictions.csv")
                        + ": the file does not exist; write the run folder again with 'lampproof deck'\n");
    }

    @Test
    void simulateOfAFolderWithoutDecksIsTold() {
        assumeSimulator();
        assertThat(run("simulate", folder.toString())).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo(folder + ": the folder contains no deck; write one with 'lampproof deck SPEC -o " + folder
                        + "'\n");
    }

    @Test
    void aTimeLimitThatIsNoneIsTold() {
        assumeSimulator();
        assertThat(run("simulate", folder.toString(), "--time-limit", "0")).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo("--time-limit: invalid time limit, found '0.0', allowed: above 0 to 86400 s\n");
    }

    @Test
    void figuresListsTheCatalogue() {
        assertThat(run("figures")).isZero();
        assertThat(out.toString()).startsWith("""
                        line.power.mean  P_in [W]
                          definition  mean of line voltage times line current
                          window      half a line period; a line period behind the dimmer
                          formula     <v i>
                        """).contains("  tolerance   2.00 %: averages over cycles; ");
    }

    @Test
    void figuresListsThoseThatBeginAsAsked() {
        assertThat(run("figures", "string.flicker")).isZero();
        assertThat(out.toString().lines().filter(line -> line.startsWith("string.flicker.")))
                .hasSize(2);
        assertThat(out.toString()).doesNotContain("line.power.mean");
        assertThat(run("figures", "sting")).isEqualTo(2);
        assertThat(err.toString())
                .contains(
                        "NAME: no figure has a name that begins with this text, found 'sting'; list them all with 'lampproof figures'");
    }

    private static void assumeSimulator() {
        try {
            Simulator.locate(System.getenv());
        } catch (UserFault missing) {
            abort("skipped: " + missing.getMessage());
        }
    }

    private int run(String... args) {
        return Main.run(CommandLines.of(args), new PrintWriter(out, true), new PrintWriter(err, true), args);
    }
}
