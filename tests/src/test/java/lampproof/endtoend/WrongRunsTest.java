package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs of the mains deck of the step-up example that are wrong on purpose, each with the one thing that gives it away. */
class WrongRunsTest {

    private static final int NO_VERDICT = 3;

    @TempDir
    private Path folder;

    private Path run;
    private Path deck;
    private Path table;

    @BeforeEach
    void write() throws Exception {
        Lampproof.simulatorOrSkip();
        run = folder.resolve("run");
        deck = run.resolve("mains.cir");
        table = run.resolve("mains.csv");
        try (InputStream spec =
                Objects.requireNonNull(getClass().getResourceAsStream("/lampproof/examples/stairwell-step-up.csv"))) {
            Files.copy(spec, folder.resolve("spec.csv"));
        }
        Lampproof written = Lampproof.run(folder, "deck", "spec.csv", "-o", "run");
        assertThat(written.exitCode()).as(written.toString()).isZero();
        Files.delete(run.resolve("crest.cir"));
    }

    @Test
    void trapezoidalIntegrationRings() throws Exception {
        change("method=gear", "method=trap");
        simulate();
        assertRefused(
                "numerical ringing: switch.current alternates from point to point in ", "integrate with method=gear");
    }

    @Test
    void pointsOfAPrintStepMissTheEdges() throws Exception {
        Files.writeString(deck, Files.readString(deck).replaceAll("\\.tran \\S+ ", ".tran 50e-9 "));
        change("\nlet line_voltage", """

                linearize v(line) v(neutral) v(filtered) v(bus) v(out) v(drain) v(gate) \
                i(Vline) i(Vbridge) i(Vinductor) i(Vswitch) i(Vdiode) i(Vstring)
                let line_voltage""");
        simulate();
        assertRefused("too coarse: with every second point omitted bridge.current.rms moves by ");
    }

    @Test
    void aStepTenTimesTooCoarseIsSeen() throws Exception {
        String text = Files.readString(deck);
        Files.writeString(deck, text.replaceAll("\\.tran \\S+ (\\S+) 0 \\S+", ".tran 2.8e-6 $1 0 2.8e-6"));
        simulate();
        assertRefused("too coarse: a step of ", " in the on-time of ", "(at most a quarter)");
    }

    @Test
    void anEmptyOutputCapacitorIsNotSettled() throws Exception {
        String text = Files.readString(deck);
        Files.writeString(deck, text.replaceAll("(Cout out 0 \\S+) ic=\\S+", "$1 ic=300"));
        simulate();
        assertRefused("not settled: output.voltage 300 V at its start, ", "a later stop time in .tran lets it settle");
    }

    /** A circuit that is not the predicted one leaves the predicted state; with time to settle, every figure is told. */
    @Test
    void twiceTheInductanceIsExplainedOnceTheRunHasSettled() throws Exception {
        change("\nLmain coil winding 12e-3", "\nLmain coil winding 24e-3");
        change(" 10e-3 0 ", " 40e-3 0 ");
        simulate();
        assertThat(check().exitCode()).isEqualTo(1);
        assertThat(VerdictRows.rows(run))
                .filteredOn(row -> row.get("figure").equals("line.power.mean")
                        && row.get("deck").equals("mains"))
                .singleElement()
                .satisfies(
                        row -> assertThat(row.get("reason")).contains("comes from the inductor: in the circuit 24."));
    }

    @Test
    void aGoodRunIsTrustedAndEachSpoiltCopyOfItsTableIsNot() throws Exception {
        simulate();
        Lampproof good = check();
        assertThat(good.exitCode()).as(good.toString()).isZero();
        List<String> rows = Files.readAllLines(table);

        Files.write(table, rows.subList(0, 2 * rows.size() / 3));
        assertRefused("incomplete: the record ends at ");

        Files.write(table, withColumn(rows, "line_current", -1));
        assertRefused("no power flows in from the line (-7.3", "W): is a probe reversed?");

        Files.write(table, withColumn(rows, "switch_current", -1));
        assertRefused("energy does not close: ");

        Files.write(table, withColumn(rows, "string_current", 1e3));
        assertRefused("energy does not close: ");

        Files.write(table, rows);
        Files.setLastModifiedTime(table, FileTime.from(Instant.EPOCH));
        assertRefused(
                Lampproof.run(folder, "check", "run"), "mains.csv: is older than mains.cir: left from an earlier run");
    }

    private void change(String what, String into) throws IOException {
        String text = Files.readString(deck);
        assertThat(text).contains(what);
        Files.writeString(deck, text.replace(what, into));
    }

    private void simulate() throws Exception {
        Lampproof simulated = Lampproof.run(folder, "simulate", "run");
        assertThat(simulated.exitCode()).as(simulated.toString()).isZero();
    }

    private Lampproof check() throws Exception {
        return Lampproof.run(folder, "check", "run", "--wave", "mains=run/mains.csv");
    }

    private void assertRefused(String... words) throws Exception {
        assertRefused(check(), words);
    }

    private void assertRefused(Lampproof checked, String... words) throws IOException {
        assertThat(checked.exitCode()).as(checked.toString()).isEqualTo(NO_VERDICT);
        assertThat(VerdictRows.figures(run, "mains", "agrees")).isEmpty();
        assertThat(VerdictRows.figures(run, "mains", "differs")).isEmpty();
        assertThat(VerdictRows.rows(run))
                .filteredOn(row -> row.get("deck").equals("mains"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.get("reason")).contains(words));
    }

    /** The rows with one column times a factor. */
    private static List<String> withColumn(List<String> rows, String name, double factor) {
        int column = List.of(rows.get(0).strip().split("\\s+")).indexOf(name);
        Stream<String> scaled =
                rows.stream().skip(1).map(row -> scaled(row.strip().split("\\s+"), column, factor));
        return Stream.concat(Stream.of(rows.get(0)), scaled).toList();
    }

    private static String scaled(String[] cells, int column, double factor) {
        return IntStream.range(0, cells.length)
                .mapToObj(i -> i == column ? String.valueOf(factor * Double.parseDouble(cells[i])) : cells[i])
                .reduce((a, b) -> a + " " + b)
                .orElse("");
    }
}
