package lampproof.lint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampproof.fault.UserFault;
import lampproof.lint.rule.LintFinding;
import lampproof.lint.rule.Rule;
import lampproof.lint.rule.Rules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LinterTest {

    @TempDir
    Path folder;

    @Test
    void findingsComeInTheOrderOfTheLines() {
        assertThat(Decks.rules("""
                        * two faults in one line, one before it
                        R1 a 0
                        R2 A 0 1M
                        V1 a 0 1
                        .op
                        .end
                        """)).containsExactly("missing-value:2", "letter-case:3", "scale-letter:3");
    }

    @Test
    void aFaultInASubcircuitThatIsUsedTwiceIsToldOnce() {
        assertThat(Decks.rules("""
                        * used twice
                        V1 a 0 1
                        X1 a 0 box
                        X2 a 0 box
                        .subckt box p q
                        C1 p mid 1n
                        C2 mid q 1n
                        .ends
                        .op
                        .end
                        """)).containsExactly("no-dc-path:6");
    }

    @Test
    void aFaultThatIsRepeatedEverywhereIsToldFiftyTimes() {
        String lines = IntStream.range(0, 200)
                .mapToObj(index -> "R" + index + " a 0 1M\n")
                .collect(Collectors.joining());
        assertThat(Decks.rules("* many\nV1 a 0 1\n" + lines + ".op\n.end\n")).hasSize(50);
    }

    @Test
    void aFileIsCheckedTogetherWithWhatItIncludes() throws Exception {
        Files.writeString(folder.resolve("models.inc"), "* models\n.model dled d(is=1e-14 foo=1)\n");
        Path deck = Files.writeString(
                folder.resolve("crest.cir"), "* deck\n.include models.inc\nV1 a 0 3\nD1 a 0 dled\n.op\n.end\n");
        List<LintFinding> findings = Linter.check(deck);
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).file())
                .isEqualTo(folder.resolve("models.inc").toString());
        assertThat(findings.get(0).lineNumber()).isEqualTo(2);
        assertThat(findings.get(0).line()).isEqualTo(".model dled d(is=1e-14 foo=1)");
        assertThat(findings.get(0).isError()).isFalse();
    }

    @Test
    void everyDeckOfARunFolderIsChecked() throws Exception {
        Files.writeString(folder.resolve("crest.cir"), "* one\nV1 a 0 1\nR1 a 0\n.op\n.end\n");
        Files.writeString(folder.resolve("mains.cir"), "* two\nV1 a 0 1\nR1 a 0 1M\n.op\n.end\n");
        Files.writeString(folder.resolve("spec.csv"), "quantity,min,typ,max,unit,note\n");
        assertThat(Linter.check(folder)).extracting(LintFinding::rule).containsExactly("missing-value", "scale-letter");
    }

    @Test
    void aMissingFileAndAFolderWithoutDecksAreFaultsOfTheUser() {
        assertThatThrownBy(() -> Linter.check(folder.resolve("none.cir")))
                .isInstanceOf(UserFault.class)
                .hasMessage(
                        "%s: the netlist cannot be read; name a netlist, or the folder of a run",
                        folder.resolve("none.cir"));
        assertThatThrownBy(() -> Linter.check(folder))
                .isInstanceOf(UserFault.class)
                .hasMessage("%s: the folder contains no deck; name a run folder with .cir files", folder);
    }

    @Test
    void everyRuleHasANameOfItsOwn() {
        assertThat(Rules.ALL)
                .extracting(Rule::name)
                .doesNotHaveDuplicates()
                .allMatch(name -> name.matches("[a-z]+(-[a-z]+)*"));
        assertThat(Rules.ALL).hasSizeGreaterThanOrEqualTo(46);
    }
}
