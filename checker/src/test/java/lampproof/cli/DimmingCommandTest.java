package lampproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DimmingCommandTest {

    private static final String LAMP = """
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

    @Test
    void the_curve_is_shown_and_written_as_table_and_page() throws IOException {
        Path spec = spec("dimmer.edge,,trailing,,,\n");
        Path output = folder.resolve("dimming");
        assertThat(run("dimming", spec.toString(), "-o", output.toString())).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString())
                .startsWith("trailing-edge dimmer, turned down and up\n")
                .contains("  monotonic ", "Open next: ")
                .doesNotContain("\nsettings\n");
        assertThat(run("dimming", spec.toString(), "--all")).isZero();
        assertThat(out.toString()).contains("\nsettings\n", "  180 deg ");
        assertThat(Files.readAllLines(output.resolve("dimming.csv"))).hasSize(1 + 37);
        assertThat(Files.readAllLines(output.resolve("dimming-figures.csv")))
                .hasSize(1 + 14)
                .contains("monotonic,,1,yes,while it is turned down no step makes the lamp brighter by 1 % of full");
        assertThat(output.resolve("dimming.html"))
                .content()
                .contains("<title>Dimming: Dims without a step back</title>", "conduction angle")
                .doesNotContain("<script", "http://", "https://");
    }

    @Test
    void nothing_is_written_unless_asked_for() throws IOException {
        assertThat(run("dimming", spec("dimmer.edge,,leading,,,\n").toString())).isZero();
        assertThat(out.toString()).startsWith("leading-edge dimmer").doesNotContain("Open next");
        assertThat(folder).isDirectoryNotContaining("glob:**.html");
    }

    @Test
    void a_table_of_someone_else_is_not_replaced() throws IOException {
        Path other = Files.writeString(folder.resolve("dimming.csv"), "my,own\n");
        assertThat(run("dimming", spec("dimmer.edge,,trailing,,,\n").toString(), "-o", folder.toString()))
                .isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo(other
                        + ": the file exists and is not a dimming curve of lampproof; name another folder with -o\n");
        assertThat(other).hasContent("my,own\n");
    }

    @Test
    void an_angle_outside_a_half_cycle_is_refused() throws IOException {
        assertThat(run("dimming", spec("dimmer.edge,,trailing,,,\n").toString(), "--prove", "--angles", "90,190"))
                .isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo("--angles: invalid conduction angle, found '190.0', allowed: above 0 to 180 deg\n");
    }

    @Test
    void angles_that_nobody_simulates_are_refused() throws IOException {
        assertThat(run("dimming", spec("dimmer.edge,,trailing,,,\n").toString(), "--angles", "90"))
                .isEqualTo(2);
        assertThat(err.toString()).isEqualTo("--angles: nothing is simulated at these angles; add --prove\n");
    }

    @Test
    void a_lamp_without_a_dimmer_is_refused() throws IOException {
        assertThat(run("dimming", spec("").toString())).isEqualTo(2);
        assertThat(err.toString())
                .isEqualTo("dimmer.edge: the spec names no dimmer; give dimmer.edge as leading or trailing\n");
    }

    private Path spec(String rows) throws IOException {
        return Files.writeString(folder.resolve("lamp.csv"), LAMP + rows);
    }

    private int run(String... args) {
        return Main.run(CommandLines.of(args), new PrintWriter(out), new PrintWriter(err), args);
    }
}
