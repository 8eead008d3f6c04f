package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DimmedTest {

    private static final List<String> MEANS =
            List.of("line.power.mean", "line.current.rms", "bleeder.loss", "string.current.mean", "string.power.mean");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({"step-down,leading,40", "step-up,leading,160", "step-up,trailing,60"})
    void the_means_behind_a_dimmer_are_those_of_the_model(String topology, String edge, int angle) throws Exception {
        Lampproof.simulatorOrSkip();
        assertThat(VerdictRows.figures(dimmed(topology, edge, angle), "dimmed", "agrees"))
                .containsAll(MEANS);
    }

    static Stream<Arguments> everyAngle() {
        return Stream.of("step-down", "step-up")
                .flatMap(topology -> Stream.of("leading", "trailing")
                        .flatMap(edge -> IntStream.rangeClosed(4, 36)
                                .mapToObj(fifth -> Arguments.of(topology, edge, 5 * fifth))));
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("everyAngle")
    void every_angle_converges(String topology, String edge, int angle) throws Exception {
        Lampproof.simulatorOrSkip();
        Path run = dimmed(topology, edge, angle);
        assertThat(Files.readString(run.resolve("dimmed.log"))).doesNotContain("aborted");
        assertThat(run.resolve("dimmed.csv")).isNotEmptyFile();
    }

    @Test
    void a_lamp_without_a_dimmer_has_no_dimmed_deck() throws Exception {
        Path spec = example("step-down", "");
        Lampproof refused = Lampproof.run(folder, "deck", spec.toString(), "--decks", "dimmed", "-o", "run");
        assertThat(refused.exitCode()).isEqualTo(2);
        assertThat(refused.err())
                .isEqualTo("dimmer.edge: the spec names no dimmer; give dimmer.edge as leading or trailing\n");
    }

    private Path dimmed(String topology, String edge, int angle) throws Exception {
        Path spec = example(topology, "dimmer.edge,," + edge + ",,,\ndimmer.angle,," + angle + ",,deg,\n");
        Lampproof.run(folder, "prove", spec.toString(), "--decks", "dimmed", "-o", "run");
        return folder.resolve("run");
    }

    private Path example(String topology, String rows) throws IOException {
        String name = "/lampproof/examples/stairwell-" + topology + ".csv";
        try (InputStream text = DimmedTest.class.getResourceAsStream(name)) {
            String spec = new String(text.readAllBytes(), StandardCharsets.UTF_8);
            return Files.writeString(folder.resolve("lamp.csv"), spec + rows);
        }
    }
}
