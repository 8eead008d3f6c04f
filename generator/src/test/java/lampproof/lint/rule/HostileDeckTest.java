package lampproof.lint.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampproof.lint.Decks;
import lampproof.lint.Linter;
import lampproof.lint.netlist.Netlist;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Decks that would do harm when they are run. */
class HostileDeckTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "shell rm x",
                "!rm x",
                "source other",
                "cd sub",
                "codemodel lib.cm",
                "pre_codemodel lib.cm",
                "alias ls shell",
                "rm x",
                "edit",
                "load x.raw",
                "gnuplot a b",
                "$c x",
                "SHELL rm x",
                "unknown",
                "set unixcom",
                "pre_set unixcom",
                "set editor=/bin/sh",
                "echo `rm x`"
            })
    void commandsThatCanDoMoreThanSimulateAreRefused(String command) {
        assertThat(rules(command)).containsExactly("forbidden-command:5");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "wrdata /etc/x v(a)", "wrdata ../x v(a)", "write sub/../../x.raw v(a)", "wrdata ~/x v(a)",
                        "wrdata $file v(a)",
                "wrdata C:\\x v(a)", "print v(a) > /etc/x", "print v(a) >> ../x", "echo x >/etc/x", "echo x >~/y"
            })
    void filesOutsideTheFolderAreRefused(String command) {
        assertThat(rules(command)).containsExactly("outside-path:5");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "run",
                "op",
                "if $sim_status > 0",
                "end",
                "quit 1",
                "set wr_singlescale",
                "set numdgt=15",
                "let p=v(a)*i(V1)",
                "wrdata out.csv v(a) i(V1)",
                "wrdata sub/out.csv v(a)",
                "print v(a) > out.txt",
                "echo $sim_status",
                "meas tran x AVG v(a) from=0 to=1m",
                "if time[length(time)-1] < 99.9u",
                "  quit $sim_status"
            })
    void whatADeckNeedsIsAllowed(String command) {
        assertThat(rules(command)).isEmpty();
    }

    private static List<String> rules(String command) {
        return Decks.rules("* t\nV1 a 0 1\nR1 a 0 1\n.control\n" + command + "\n.endc\n.op\n.end\n");
    }

    @Test
    void aForbiddenCommandIsToldWithItsReason() {
        assertThat(Decks.messages("""
                        * t
                        V1 a 0 1
                        R1 a 0 1
                        .control
                        op
                        shell curl somewhere
                        wrdata ../out.csv v(a)
                        .endc
                        .end
                        """)).containsExactly("""
                        deck.cir:6: error: the command shell is not one that a deck may give [forbidden-command]
                          shell curl somewhere
                          ^^^^^
                          Why: a deck from somebody else can run programs and change files on this machine
                          Write: only commands that simulate and write results into the deck's folder""", """
                        deck.cir:7: error: ../out.csv may lie outside the deck's folder [outside-path]
                          wrdata ../out.csv v(a)
                                 ^^^^^^^^^^
                          Why: a deck from somebody else can read or overwrite any file, and a copied run folder reads the wrong one
                          Write: a plain file name, and the file beside the deck""");
    }

    @Test
    void aCommandInACommentIsFound() {
        assertThat(Decks.messages("""
                        * t
                        V1 a 0 1
                        R1 a 0 1
                        *# echo x
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:4: error: a command is hidden in a comment [hidden-command]
                          *# echo x
                          ^^
                          Why: ngspice runs what stands behind *# as a command, although it looks like a comment
                          Write: the command in the control block, or the comment with a blank behind the *""");
        assertThat(Decks.rules("*ng_script\nshell rm x\n")).containsExactly("hidden-command:1", "forbidden-command:2");
    }

    @Test
    void filesAndProgramsOfCodeModelsAreFound() {
        assertThat(Decks.rules("""
                        * t
                        V1 a 0 1
                        R1 a 0 1
                        .model reader filesource(file="/etc/passwd" amploffset=[0])
                        .model runner d_process(process_file="x")
                        .include /etc/passwd
                        .op
                        .end
                        """)).containsExactly("outside-path:4", "forbidden-command:5", "outside-path:6");
    }

    @Test
    @Timeout(60)
    void aLargeDeckIsCheckedInSeconds() {
        String chain = IntStream.range(0, 20_000)
                .mapToObj(index ->
                        "V%d n%d n%d 1\nC%d n%d m%d 1n\n".formatted(index, index, index + 1, index, index, index))
                .collect(Collectors.joining());
        assertThat(Linter.check(Netlist.parse("* t\n" + chain + ".op\n.end\n", "deck.cir")))
                .isNotEmpty();
        String wide = "X1 "
                + IntStream.range(0, 20_000).mapToObj(index -> "n" + index).collect(Collectors.joining("\n+ "));
        assertThat(Linter.check(Netlist.parse("* t\n" + wide + "\n+ nosub\n.op\n.end\n", "deck.cir")))
                .isNotEmpty();
    }
}
