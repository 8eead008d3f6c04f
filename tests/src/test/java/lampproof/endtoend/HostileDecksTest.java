package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A deck that reaches out of its folder is refused before the simulator sees it: nothing is written, nothing is run. */
class HostileDecksTest {

    private static final int BAD_INPUT = 2;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "echo x >\"OUTSIDE\"",
                "echo x>OUTSIDE",
                "print v(a) >'OUTSIDE'",
                "let q = 1 > OUTSIDE",
                "option rawfile=OUTSIDE\nwrite",
                "wrdata {OUTSIDE} v(a)",
                "echo x >\"../../outside\"",
                "set measoutfile=OUTSIDE\nrun",
                "set gt = '>'\necho x $gt OUTSIDE",
                "echo `touch OUTSIDE`",
                "shell touch OUTSIDE",
                "echo x \\\\\n.endc\nshell touch OUTSIDE",
                ".endc\n$# shell touch OUTSIDE\n.control",
                ".endc\n.if 0\nR2 a 0 1\n.else\n.control\nshell touch OUTSIDE\n.endc\n.endif\n.control",
                ".endc\n.model source filesource(file=\"OUTSIDE\")\n.control"
            })
    void aHostileDeckWritesNothing(String lines) throws Exception {
        Lampproof.simulatorOrSkip();
        Path outside = folder.resolve("outside");
        Path run = Files.createDirectory(folder.resolve("run"));
        Path deck = Files.writeString(run.resolve("crest.cir"), deck(lines.replace("OUTSIDE", outside.toString())));
        Lampproof simulated = Lampproof.run(folder, "simulate", "run");
        assertThat(simulated.exitCode()).as(simulated.toString()).isEqualTo(BAD_INPUT);
        assertThat(simulated.err()).contains("crest.cir:", "error: ", "so it is not run");
        assertThat(outside).doesNotExist();
        assertThat(files(run)).containsExactly(deck);
    }

    private static String deck(String lines) {
        return """
                * hostile
                V1 a 0 1
                R1 a 0 1k
                .tran 10u 1m
                .meas tran mean AVG v(a)
                .control
                run
                LINES
                wrdata crest.csv v(a)
                .endc
                .end
                """.replace("LINES", lines);
    }

    private static List<Path> files(Path run) throws IOException {
        try (Stream<Path> files = Files.list(run)) {
            return files.toList();
        }
    }
}
