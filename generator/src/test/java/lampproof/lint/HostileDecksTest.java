package lampproof.lint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lampproof.lint.rule.LintFinding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Decks that reach files and programs of the machine, each tried with the real simulator and refused by its rule. */
class HostileDecksTest {

    private static final String SECRET = "7.000000e+00";

    @TempDir
    Path folder;

    private Path run;
    private Path outside;

    @BeforeEach
    void prepare() throws IOException {
        run = Files.createDirectory(folder.resolve("run"));
        outside = folder.resolve("outside");
    }

    static Stream<HostileDeck> decks() {
        return Stream.concat(HostileDeck.controlBlocks(), HostileDeck.folders());
    }

    @Test
    void sixtyControlBlocksAtLeastDoHarm() {
        assertThat(HostileDeck.controlBlocks().filter(deck -> deck.harm().equals("writes")))
                .hasSizeGreaterThanOrEqualTo(60);
        assertThat(HostileDeck.folders()).hasSizeGreaterThanOrEqualTo(40);
    }

    @ParameterizedTest
    @MethodSource("decks")
    void aHostileDeckIsRefused(HostileDeck hostile) throws IOException {
        List<LintFinding> errors = Linter.check(hostile.writeTo(run, outside)).stream()
                .filter(LintFinding::isError)
                .toList();
        assertThat(errors).extracting(LintFinding::rule).contains(hostile.rule());
    }

    /** What the test data says of a deck; it was found with ngspice 39. */
    @ParameterizedTest
    @MethodSource("decks")
    void aHostileDeckDoesWhatIsSaidOfIt(HostileDeck hostile) throws Exception {
        hostile.writeTo(run, outside);
        Files.writeString(folder.resolve("outside.data"), "0 7\n1 7\n");
        String block = ".control\nshell touch " + outside + "\n.endc\n";
        Files.writeString(folder.resolve("outside.inc"), block);
        Files.writeString(folder.resolve("outside.lib"), "* x\n.lib s\n" + block + ".endl\n");
        assumeTrue(Ngspice.isVersion("39"), "other versions than ngspice 39 may do something else");
        List<Path> before = files();
        String output = Ngspice.run(run, Map.of("HOME", folder.toString()));
        List<Path> written =
                files().stream().filter(file -> !before.contains(file)).toList();
        String harm = written.isEmpty() ? output.contains(SECRET) ? "reads" : "nothing" : "writes";
        assertThat(harm).as(output).isEqualTo(hostile.harm());
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> !file.endsWith(Ngspice.OUTPUT)).toList();
        }
    }
}
