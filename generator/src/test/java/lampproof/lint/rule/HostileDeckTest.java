package lampproof.lint.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampproof.lint.Decks;
import lampproof.lint.Linter;
import lampproof.lint.netlist.NetlistReader;
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
                "altermod dio file=x.mod",
                "echo `rm x`"
            })
    void commandsThatCanDoMoreThanSimulateAreRefused(String command) {
        assertThat(rules(command)).containsExactly("forbidden-command:5");
    }

    @ParameterizedTest
    @ValueSource(strings = {"set unixcom", "pre_set unixcom", "set editor=/bin/sh", "option rawfile=x", "set a=$b{c}"})
    void variablesThatNameFilesAndProgramsAreRefused(String command) {
        assertThat(rules(command)).contains("forbidden-variable:5");
    }

    @ParameterizedTest
    @ValueSource(strings = {"note=display", "note = \"editor\", x=1", "a=1 note= program", "note =rawfile reltol=1e-4"})
    void aValueOfAnOptionIsNoName(String options) {
        assertThat(Decks.rules("* t\nV1 a 0 1\nR1 a 0 1\n.options " + options + "\n.op\n.end\n"))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "display",
                "note=\"a measoutfile=x\"",
                "note= \"x\" measoutfile=x",
                "note=(b measoutfile=x)",
                "a=b measoutfile =x",
                "a=b,measoutfile=x",
                "a=\"\" unixcom",
                "a = measoutfile = x",
                "a measoutfile = x",
                "measoutfile=measoutfile"
            })
    void aNameAmongOptionsIsFoundInEveryForm(String options) {
        assertThat(Decks.rules("* t\nV1 a 0 1\nR1 a 0 1\n.options " + options + "\n.op\n.end\n"))
                .contains("forbidden-variable:4");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "print v(a) > x",
                "print v(a) >> ../x",
                "echo x >/etc/x",
                "echo x >~/y",
                "let q = v(a)>=1",
                "set x < y"
            })
    void redirectionsAreRefusedWhereverTheyLead(String command) {
        assertThat(rules(command)).contains("redirection:5");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "wrdata /etc/x v(a)", "wrdata ../x v(a)", "write sub/../../x.raw v(a)", "wrdata ~/x v(a)",
                        "wrdata $file v(a)",
                "wrdata C:\\x v(a)", "wrdata {x} v(a)", "run /etc/x", "pre_write ../x pi", "wrdata .x v(a)"
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
                "wrdata out/r(1).csv v(a)",
                "wrdata 50%_x@25#a[1].csv v(a)",
                "run out.raw",
                "let q = v(a) >= 1",
                "define larger(x,y) x > y",
                "stop when time > 5u",
                "echo \"a > b\"",
                "while v(a)[0] > 5",
                "set list = ( 1 2 )",
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
    void aFileNameIsRefusedForTheReasonThatItHas() {
        assertThat(Decks.messages("""
                        * t
                        V1 a 0 1
                        R1 a 0 1
                        .control
                        op
                        wrdata sub/.spiceinit v(a)
                        write a,b.raw v(a)
                        .endc
                        .include a;b.inc
                        .end
                        """)).contains("""
                        deck.cir:6: error: sub/.spiceinit is the name of a hidden file [outside-path]
                          wrdata sub/.spiceinit v(a)
                                 ^^^^^^^^^^^^^^
                          Why: programs read settings from such files: ngspice runs the commands of a .spiceinit in its folder
                          Write: a file name that begins with a letter""", """
                        deck.cir:7: error: a,b.raw holds a mark that ngspice does not read as part of a file name [outside-path]
                          write a,b.raw v(a)
                                ^^^^^^^
                          Why: the simulator reads or writes a file of another name, or none
                          Write: a file name of letters, digits, - and _""", """
                        deck.cir:9: error: a;b.inc holds a mark that ngspice does not read as part of a file name [outside-path]
                          .include a;b.inc
                                   ^^^^^^^
                          Why: the simulator reads or writes a file of another name, or none
                          Write: a file name of letters, digits, - and _""");
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
                        """)).containsExactly("forbidden-model:4", "forbidden-model:5", "outside-path:6");
    }

    @Test
    void aParameterThatNamesAModelKindMattersOnlyWhereAKindIsPutTogether() {
        String deck = "* t\nV1 a 0 1\nR1 a 0 1\n.param note=\"numd\"\n.op\n.end\n.model m ";
        assertThat(Decks.rules(deck + "d(is={1e-14})\n")).isEmpty();
        assertThat(Decks.rules(deck + "{note}(level=1)\n")).contains("forbidden-model:4");
        assertThat(Decks.rules(deck + "'note' level=1\n")).contains("forbidden-model:4");
        assertThat(Decks.rules(deck.replace("model m", "model {m o}") + "{note}(level=1)\n"))
                .contains("forbidden-model:4");
    }

    @Test
    void whatReachesOrHidesFilesIsToldWithItsReason() {
        assertThat(Decks.messages("""
                        * t
                        V1 a 0 1
                        R1 a 0 1
                        .options measoutfile=x
                        .control
                        print v(a) >x
                        set x = $curplottitle
                        echo x \\\\
                        .model m filesource(file="x")
                        .op
                        .end
                        """)).contains("""
                        deck.cir:4: error: the variable measoutfile is not one that a deck may set [forbidden-variable]
                          .options measoutfile=x
                                   ^^^^^^^^^^^
                          Why: a deck from somebody else can name files and programs of this machine with it, or hide lines from this check
                          Write: only the deck's own variables and those that choose how numbers and tables are written""", """
                        deck.cir:5: error: the control block has no end [control-block]
                          .control
                          ^^^^^^^^
                          Why: the simulator then reads comments of the whole deck as it reads them in a control block, and stops or runs them
                          Write: one .endc behind each .control, and no .control before it""", """
                        deck.cir:6: error: the command is redirected to or from a file [redirection]
                          print v(a) >x
                                     ^
                          Why: a deck from somebody else can read or overwrite any file; a comparison here writes a file too
                          Write: wrdata or write with a plain file name; comparisons in if and while, elsewhere gt, lt, ge and le""", """
                        deck.cir:7: error: the title of the deck is used as a variable [disguised-variable]
                          set x = $curplottitle
                                   ^
                          Why: the simulator reads the command again with the value in it, which may be a file to write or a program to run
                          Write: $name with blanks around it, or in double quotes""", """
                        deck.cir:8: error: two backslashes end the line [backslash-continuation]
                          echo x \\\\
                                 ^^
                          Why: ngspice joins the next line to it, even one that ends a control block; other simulators do not
                          Write: + and a blank at the start of the next line""", """
                        deck.cir:9: error: the model kind filesource runs a program, loads a library, or reads or writes a file [forbidden-model]
                          .model m filesource(file="x")
                                   ^^^^^^^^^^
                          Why: a deck from somebody else can reach any file and program of this machine with it
                          Write: a source with its values in the deck, for example pwl, or a behavioural source""");
    }

    @Test
    void longFileNamesAreCheckedInMoments() {
        String quotes = "\"'".repeat(49_000);
        String blanks = "\" ".repeat(33_000);
        String deck = "* t\n.control\n" + ("wrdata x" + quotes + "\u0085\necho " + quotes + "\u0085\n").repeat(10)
                + ".endc\n" + (".include \"" + " x".repeat(49_000) + "\n.include " + blanks + "x\n").repeat(10);
        assertTimeoutPreemptively(
                Duration.ofSeconds(20), () -> assertThat(Decks.rules(deck)).contains("blank-in-file-name:3"));
    }

    @Test
    @Timeout(60)
    void aLargeDeckIsCheckedInSeconds() {
        String chain = IntStream.range(0, 20_000)
                .mapToObj(index ->
                        "V%d n%d n%d 1\nC%d n%d m%d 1n\n".formatted(index, index, index + 1, index, index, index))
                .collect(Collectors.joining());
        assertThat(Linter.check(NetlistReader.parse("* t\n" + chain + ".op\n.end\n", "deck.cir")))
                .isNotEmpty();
        String wide = "X1 "
                + IntStream.range(0, 20_000).mapToObj(index -> "n" + index).collect(Collectors.joining("\n+ "));
        assertThat(Linter.check(NetlistReader.parse("* t\n" + wide + "\n+ nosub\n.op\n.end\n", "deck.cir")))
                .isNotEmpty();
    }
}
