package lampproof.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import lampproof.spec.Vocabulary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RowsCommandTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    @Test
    void lists_every_row_below_its_group() {
        assertThat(run("rows")).isZero();
        for (String name : Vocabulary.names()) {
            assertThat(out.toString()).containsPattern("(?m)^  " + name.replace(".", "\\.") + " ");
        }
        for (String group : Vocabulary.groups()) {
            assertThat(out.toString().lines()).contains(group);
        }
        assertThat(out.toString()).contains("""
                  line.resistance  0 Ohm to 100 Ohm  resistance of the mains and the wiring
                      default: 1 Ohm: house wiring
                """);
    }

    @Test
    void shows_a_row_in_full() {
        assertThat(run("rows", "Line.Voltage")).isZero();
        assertThat(out.toString()).isEqualTo("""
                line.voltage
                  meaning  rms voltage of the mains
                  range    80 V to 305 V
                  unit     uV, mV, V, kV
                  default  none: required in every spec
                """);
    }

    @Test
    void shows_every_default_rule_of_a_row() {
        assertThat(run("rows", "switching.max_on_time")).isZero();
        assertThat(out.toString().lines())
                .contains(
                        "  default  peak-current control: 90 % of the period",
                        "           fixed-off-time control: twice the crest period");
    }

    @Test
    void shows_a_group_in_full() {
        assertThat(run("rows", "driver")).isZero();
        assertThat(out.toString().lines())
                .contains("driver.topology", "driver.control", "driver.shaping")
                .contains("  words    step-down, step-up", "  unit     none: a plain number");
    }

    @Test
    void suggests_the_nearest_row_or_group() {
        assertThat(run("rows", "lin.voltage")).isEqualTo(2);
        assertThat(run("rows", "swich")).isEqualTo(2);
        assertThat(err.toString())
                .contains("NAME: unknown name, found 'lin.voltage', allowed: names of the groups line, ")
                .contains("did you mean line.voltage?", "did you mean switch?");
    }

    @Test
    void rejects_a_name_beside_the_blank_spec() {
        assertThat(run("rows", "--blank", "line")).isEqualTo(2);
        assertThat(err.toString()).contains("NAME: --blank prints all rows, found 'line'; remove --blank or the name");
    }

    @Test
    void predicts_from_the_blank_spec_with_the_required_rows_filled_in() throws IOException {
        assertThat(run("rows", "--blank")).isZero();
        String filled = out.toString()
                .replace("driver.topology,,,", "driver.topology,,step-up,")
                .replace("line.voltage,,,,V", "line.voltage,207,230,253,V")
                .replace("line.frequency,,,,Hz", "line.frequency,,50,,Hz")
                .replace("string.voltage,,,,V", "string.voltage,,420,,V")
                .replace("string.current,,,,A", "string.current,,16.7,,mA");
        Path spec = Files.writeString(folder.resolve("lamp.csv"), filled);
        assertThat(run("predict", spec.toString())).as(err.toString()).isZero();
    }

    @Test
    void reads_a_row_of_the_blank_spec_whose_comment_sign_is_deleted() throws IOException {
        run("rows", "--blank");
        String opened = out.toString()
                .replaceAll("(?m)^# (?=[a-z_.]+,,,,)", "")
                .replace("inductor.turns,,,,", "inductor.turns,,4k,,");
        Path spec = Files.writeString(folder.resolve("lamp.csv"), opened);
        assertThat(run("predict", spec.toString())).isEqualTo(2);
        assertThat(err.toString().lines())
                .contains(Vocabulary.names().size() + " faults.")
                .noneMatch(line -> line.contains("unknown name"));
    }

    private int run(String... args) {
        return Main.run(CommandLines.of(args), new PrintWriter(out, true), new PrintWriter(err, true), args);
    }
}
