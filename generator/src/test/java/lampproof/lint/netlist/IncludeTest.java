package lampproof.lint.netlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import lampproof.lint.Ngspice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IncludeTest {

    @TempDir
    Path folder;

    @Test
    void theFirstLineOfAnIncludedFileIsNoTitle() throws Exception {
        write("run/models.inc", "R1 a 0 1k\n");
        Netlist netlist = read("* t\n.include models.inc\nR2 a 0 1k\n");
        assertThat(netlist.elements()).extracting(each -> each.name().text()).containsExactly("R1", "R2");
        assertThat(outcomes(netlist)).containsExactly(Include.Outcome.READ);
    }

    @Test
    void aNestedFileIsLookedForBesideTheFileThatNamesIt() throws Exception {
        write("run/parts/outer.inc", ".include \"inner part.inc\"\n");
        write("run/parts/inner part.inc", "R1 a 0 1k\n");
        Netlist netlist = read("* t\n.include parts/outer.inc\n");
        assertThat(netlist.elements()).hasSize(1);
        assertThat(netlist.isComplete()).isTrue();
    }

    /** ngspice looks in the folder in which it is started, then beside the file that names the other one. */
    @Test
    void aNestedFileMayStandBesideTheDeckInstead() throws Exception {
        write("run/parts/outer.inc", ".include inner.inc\n");
        write("run/inner.inc", "R1 a 0 1k\n");
        Netlist netlist = read("* t\n.include parts/outer.inc\n");
        assertThat(outcomes(netlist)).containsExactly(Include.Outcome.READ, Include.Outcome.READ);
        assertThat(netlist.elements()).hasSize(1);
    }

    @Test
    void oneSectionOfALibraryIsRead() throws Exception {
        write("run/diodes.lib", "* library\n.lib slow\nR1 a 0 1k\n.endl\n.lib fast\nR2 a 0 1k\n.endl\n");
        assertThat(read("* t\n.lib diodes.lib FAST\n").elements())
                .extracting(each -> each.name().text())
                .containsExactly("R2");
        assertThat(outcomes(read("* t\n.lib diodes.lib typical\n"))).containsExactly(Include.Outcome.SECTION_MISSING);
    }

    @Test
    void aNameThatTwoFilesOrTwoSectionsHaveIsAmbiguous() throws Exception {
        write("run/parts/outer.inc", ".include inner.inc\n");
        write("run/parts/inner.inc", "R1 a 0 1k\n");
        write("run/inner.inc", "R2 a 0 1k\n");
        assertThat(outcomes(read("* t\n.include parts/outer.inc\n")))
                .containsExactly(Include.Outcome.READ, Include.Outcome.AMBIGUOUS);
        write("run/twice.lib", "* library\n.lib a\nR1 a 0 1\n.endl\n.lib 'a'\nR2 a 0 1\n.endl\n");
        assertThat(outcomes(read("* t\n.lib twice.lib a\n"))).containsExactly(Include.Outcome.AMBIGUOUS);
    }

    @Test
    void aLibraryOfQuotesIsReadInMomentsAndItsSectionsAreFound() throws Exception {
        String quotes = (".lib" + "\"".repeat(99_000) + "\n").repeat(10);
        String parted = (".lib " + "'s ".repeat(33_000) + "\u2028\n").repeat(10);
        write("run/quotes.lib", "* library\n" + quotes + parted + ".lib\"s\"\nR1 a 0 1k\n.endl\n");
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            assertThat(outcomes(read("* t\n.lib quotes.lib none\n"))).containsExactly(Include.Outcome.SECTION_MISSING);
            assertThat(outcomes(read("* t\n.lib quotes.lib s\n"))).containsExactly(Include.Outcome.AMBIGUOUS);
        });
        for (String begin : List.of(".lib s", ".lib's'", ".library 's'", ".lib\"\" 's;", ".lib \t\"'s'\" x")) {
            write("run/one.lib", "* library\n" + begin + "\nR1 a 0 1k\n.endl\n.lib other\n.endl\n.lib ss\n.endl\n");
            assertThat(outcomes(read("* t\n.lib one.lib s\n"))).as(begin).containsExactly(Include.Outcome.READ);
        }
    }

    @Test
    void aControlBlockThatAnIncludedFileOpensGoesOnBehindIt() throws Exception {
        write("run/open.inc", ".control\nrun\n");
        assertThat(read("* t\n.include open.inc\nshell x\n.endc\nR1 a 0 1k\n").commands())
                .extracting(command -> command.name().text())
                .containsExactly("run", "shell");
    }

    @Test
    void nothingOutsideTheFolderIsRead() throws Exception {
        write("secret.inc", "R1 a 0 1k\n");
        Files.createSymbolicLink(
                Files.createDirectories(folder.resolve("run")).resolve("link.inc"), folder.resolve("secret.inc"));
        String absolute = folder.resolve("secret.inc").toString();
        for (String path : List.of(
                "../secret.inc",
                absolute,
                "sub/../../secret.inc",
                "~/secret.inc",
                "$HOME/x",
                "a\0b",
                "a;b",
                "..",
                "...",
                "./../secret.inc",
                ".x/../../secret.inc",
                "(1)/../../secret.inc",
                "~x.inc",
                "a//b",
                "link.inc")) {
            Netlist netlist = read("* t\n.include " + path + "\n");
            assertThat(outcomes(netlist)).as(path).containsExactly(Include.Outcome.OUTSIDE);
            assertThat(netlist.elements()).as(path).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"my(1).inc", "a,b.inc", "a&b.inc", "x@25.inc", "50%.inc", "a#1.inc", ".hidden.inc", "a[1].inc"})
    void marksThatTheSimulatorReadsAsTheyAreMayStandInAName(String name) throws Exception {
        write("run/" + name, "R1 a 0 7\n");
        for (String written : List.of(name, "\"" + name + "\"")) {
            String deck = "* t\nV1 a 0 1\n.include " + written + "\n.control\nop\nprint @r1[resistance]\n.endc\n.end\n";
            assertThat(outcomes(read(deck))).containsExactly(Include.Outcome.READ);
            String output = Ngspice.run(folder.resolve("run"), deck);
            assertThat(Ngspice.value(output, "@r1[resistance]")).isEqualTo(7);
        }
    }

    @Test
    void filesThatIncludeEachOtherEnd() throws Exception {
        write("run/one.inc", ".include two.inc\nR1 a 0 1k\n");
        write("run/two.inc", ".include one.inc\n");
        assertThat(outcomes(read("* t\n.include one.inc\n"))).contains(Include.Outcome.LOOP);
        assertThat(outcomes(read("* t\n.include deck.cir\n"))).containsExactly(Include.Outcome.LOOP);
    }

    @Test
    void oneSectionOfALibraryMayCallAnotherButNotItself() throws Exception {
        write(
                "run/parts.lib",
                "* library\n.lib typical\nR1 a 0 1k\n.lib parts.lib common\n.endl\n.lib common\nR2 a 0 1k\n.endl\n");
        Netlist netlist = read("* t\n.lib parts.lib typical\n");
        assertThat(outcomes(netlist)).containsExactly(Include.Outcome.READ, Include.Outcome.READ);
        assertThat(netlist.elements()).extracting(each -> each.name().text()).containsExactly("R1", "R2");
        write("run/self.lib", "* library\n.lib s\n.lib self.lib s\n.endl\n");
        assertThat(outcomes(read("* t\n.lib self.lib S\n")))
                .containsExactly(Include.Outcome.READ, Include.Outcome.LOOP);
        write("run/round.lib", "* library\n.lib s\n.lib round.lib t\n.endl\n.lib t\n.lib round.lib s\n.endl\n");
        assertThat(outcomes(read("* t\n.lib round.lib s\n")))
                .containsExactly(Include.Outcome.READ, Include.Outcome.READ, Include.Outcome.LOOP);
    }

    @Test
    void filesThatIncludeTwiceEachDoNotMultiplyWithoutEnd() throws Exception {
        for (int level = 0; level < 19; level++) {
            String next = ".include level" + (level + 1) + ".inc\n";
            write("run/level" + level + ".inc", next + next);
        }
        write("run/level19.inc", "R1 a 0 1k\n");
        Netlist netlist = read("* t\n.include level0.inc\n");
        assertThat(outcomes(netlist)).contains(Include.Outcome.TOO_MUCH);
        assertThat(netlist.includes()).hasSizeLessThan(500);
    }

    @Test
    void aMissingFileAndAFolderAreMissing() throws Exception {
        Files.createDirectories(folder.resolve("run/sub"));
        assertThat(outcomes(read("* t\n.include none.inc\n"))).containsExactly(Include.Outcome.MISSING);
        assertThat(outcomes(read("* t\n.include sub\n"))).containsExactly(Include.Outcome.MISSING);
    }

    @Test
    void aTextAloneIsNotLookedUpInAnyFolder() {
        Netlist netlist = NetlistReader.parse("* t\n.include models.inc\n", "deck.cir");
        assertThat(outcomes(netlist)).containsExactly(Include.Outcome.NOT_LOOKED_AT);
    }

    @Test
    void bytesThatAreNotUtf8AreStillRead() throws Exception {
        Path deck = Files.createDirectories(folder.resolve("run")).resolve("deck.cir");
        Files.write(deck, new byte[] {'*', ' ', (byte) 0xb5, '\n', 'R', '1', ' ', 'a', ' ', '0', ' ', '1', '\n'});
        assertThat(NetlistReader.read(deck).elements()).hasSize(1);
    }

    private Netlist read(String deck) throws Exception {
        write("run/deck.cir", deck);
        return NetlistReader.read(folder.resolve("run/deck.cir"));
    }

    private void write(String name, String text) throws Exception {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static List<Include.Outcome> outcomes(Netlist netlist) {
        return netlist.includes().stream().map(Include::outcome).toList();
    }
}
