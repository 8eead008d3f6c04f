package lampproof.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lampproof.fault.UserFault;
import lampproof.simulator.Simulator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
        for (String command :
                List.of("prove", "predict", "deck", "simulate", "check", "dimming", "measure", "figures", "lint")) {
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
                        "\n  lint");
    }

    @Test
    void predictShowsLossesThenFiguresThenRules() {
        assertThat(run("predict", spec.toString())).isZero();
        assertThat(err.toString()).isEmpty();
        List<String> lines = out.toString().lines().toList();
        assertThat(lines.get(0)).isEqualTo("losses over the line cycle, largest first");
        assertThat(out.toString()).contains("\nfigures\n").contains("  line.power.mean ");
        assertThat(out.toString())
                .contains("\nrules and ratings, by calculation, which is no proof of compliance\n")
                .containsPattern("  NOT KEPT +conducted noise, differential mode +order 3 at 210 kHz .*"
                        + "CISPR 15:2018 \\(from memory\\) and 47 CFR 18.307 \\(a\\), quasi-peak");
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
                .isEqualTo("--wave: there is no such deck, found 'main', allowed: crest, mains, dimmed, "
                        + "open-string, shorted-string, surge, noise, power-up; did you mean mains?\n");
    }

    @Test
    void checkOfAFolderThatIsNoRunIsTold() {
        assertThat(run("check", folder.toString())).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo(folder.resolve("predictions.csv")
                        + ": there is no such file; write the run folder again with 'lampproof deck'\n");
    }

    @Test
    void simulateOfAFolderWithoutDecksIsTold() {
        assumeSimulator();
        assertThat(run("simulate", folder.toString())).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo(folder + ": there is no deck in this folder; write one with 'lampproof deck SPEC -o "
                        + folder + "'\n");
    }

    @Test
    void aTimeLimitThatIsNoneIsTold() {
        assumeSimulator();
        assertThat(run("simulate", folder.toString(), "--time-limit", "0")).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo("--time-limit: this is no time limit, found '0.0', allowed: above 0 to 86400 s\n");
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
                .contains("NAME: no figure begins like this, found 'sting'; list them all with 'lampproof figures'");
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
