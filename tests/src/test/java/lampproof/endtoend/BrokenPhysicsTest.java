package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Physics broken on purpose, in the text of a deck only: the crest deck is enough, and fast. */
class BrokenPhysicsTest {

    @TempDir
    private Path folder;

    private Path run;

    @BeforeEach
    void requireSimulator() {
        Lampproof.simulatorOrSkip();
        run = folder.resolve("run");
    }

    /** Twice the inductance at the same on-time halves every current; the times stay. */
    @Test
    void twiceTheInductanceIsFoundInEveryCurrentOfTheStepUpDriver() throws Exception {
        List<String> differing = differing("step-up", "(?m)^Lmain coil winding (\\S+)", 2);
        assertThat(differing)
                .contains(
                        "inductor.current.peak",
                        "inductor.current.rms",
                        "inductor.current.ripple",
                        "switch.current.mean",
                        "diode.current.mean")
                .doesNotContain("switching.on_time", "switch.voltage.peak", "diode.voltage.peak");
        assertExplained("inductor.current.peak", "in the circuit 24.0", "prediction used 12.00 mH");
        assertExplained("diode.current.mean", "in the circuit 24.0", "prediction used 12.00 mH");
    }

    /** Half the on-time halves every current and doubles the frequency, but for the minimum off-time. */
    @Test
    void halfTheOnTimeIsFoundInTimesAndCurrentsOfTheStepUpDriver() throws Exception {
        List<String> differing = differing("step-up", "V\\(on_timer\\) < ([^ )]+)", 0.5);
        assertThat(differing)
                .contains(
                        "switching.on_time",
                        "switching.frequency.crest",
                        "inductor.current.peak",
                        "inductor.current.rms",
                        "diode.current.mean")
                .doesNotContain("switch.voltage.peak", "diode.voltage.peak");
        assertExplained("inductor.current.rms", "all of the 4", "comes from the on-time: predicted 3.4");
        assertExplained("switching.on_time", "none of bus voltage at the crest, ", " explains it");
    }

    /** The reference holds the peak and the off-time is fixed: half the ripple, so more current, at the same times. */
    @Test
    void twiceTheInductanceIsFoundInTheRippleOfTheStepDownDriver() throws Exception {
        List<String> differing = differing("step-down", "(?m)^Lmain coil winding (\\S+)", 2);
        assertThat(differing)
                .contains(
                        "inductor.current.ripple", "inductor.current.rms", "switch.current.mean", "diode.current.mean")
                .doesNotContain(
                        "inductor.current.peak",
                        "switch.current.peak",
                        "switching.on_time",
                        "switching.frequency.crest",
                        "switch.voltage.peak",
                        "diode.voltage.peak");
        assertExplained("inductor.current.ripple", "in the circuit 4.40", "the prediction used 2.200 mH");
    }

    private void assertExplained(String figure, String... words) throws IOException {
        assertThat(VerdictRows.rows(run))
                .filteredOn(row ->
                        row.get("figure").equals(figure) && row.get("deck").equals("crest"))
                .singleElement()
                .satisfies(row -> assertThat(row.get("reason")).contains(words));
    }

    private List<String> differing(String topology, String value, double factor) throws Exception {
        write(topology);
        multiply(run.resolve("crest.cir"), Pattern.compile(value), factor);
        Files.delete(run.resolve("mains.cir"));
        Lampproof simulated = Lampproof.run(folder, "simulate", "run");
        assertThat(simulated.exitCode()).as(simulated.toString()).isZero();
        Lampproof checked = Lampproof.run(folder, "check", "run", "--wave", "crest=run/crest.csv");
        assertThat(checked.exitCode()).as(checked.toString()).isEqualTo(1);
        assertThat(VerdictRows.figures(run, "crest", "no verdict")).isEmpty();
        return VerdictRows.figures(run, "crest", "differs");
    }

    private void write(String topology) throws Exception {
        String example = "stairwell-" + topology + ".csv";
        try (InputStream spec =
                Objects.requireNonNull(getClass().getResourceAsStream("/lampproof/examples/" + example))) {
            Files.copy(spec, folder.resolve(example));
        }
        Lampproof written = Lampproof.run(folder, "deck", example, "-o", "run");
        assertThat(written.exitCode()).as(written.toString()).isZero();
    }

    private static void multiply(Path deck, Pattern value, double factor) throws IOException {
        String text = Files.readString(deck);
        List<MatchResult> found = value.matcher(text).results().toList();
        assertThat(found).hasSize(1);
        MatchResult number = found.get(0);
        String changed = String.format(Locale.ROOT, "%.9e", factor * Double.parseDouble(number.group(1)));
        Files.writeString(deck, text.substring(0, number.start(1)) + changed + text.substring(number.end(1)));
    }
}
