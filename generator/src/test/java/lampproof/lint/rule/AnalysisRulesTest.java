package lampproof.lint.rule;

import static org.assertj.core.api.Assertions.assertThat;

import lampproof.lint.Decks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults in what a deck asks the simulator to do, and in the form of its lines. */
class AnalysisRulesTest {

    @Test
    void aDeckWithoutAnalysisAndWithoutEndIsTold() {
        assertThat(Decks.messages("* t\nV1 a 0 1\nR1 a 0 1k\n")).containsExactly("""
                        deck.cir:3: error: the deck asks for no analysis [no-analysis]
                          R1 a 0 1k
                          ^^^^^^^^^
                          Why: the simulator ends without a result, and may still report success
                          Write: .tran STEP STOP, or another analysis, before .end""", """
                        deck.cir:3: warning: the deck has no .end [no-end]
                          R1 a 0 1k
                          ^^^^^^^^^
                          Why: ngspice does without it, but a deck that was cut short while it was written looks the same
                          Write: .end as the last line""");
    }

    @Test
    void linesThatTheSimulatorSkipsKeepTheirPlace() {
        String deck = "* t\nV1 a 0 1\nR1 a 0 1k\n.param x=1\n.op\n.if (x == 1)\nR2 a 0 1\n";
        assertThat(Decks.rules(deck + ".endif\n.end\n")).isEmpty();
        assertThat(Decks.rules(deck + ".endif\n.include a b.inc\n.end\n")).containsExactly("blank-in-file-name:9");
        assertThat(Decks.rules(deck + ".else\n.include a b.inc\n.endif\n.end\n"))
                .isEmpty();
    }

    @Test
    void aDotLineInTheControlBlockIsToldWhereItBelongs() {
        assertThat(Decks.messages("* t\nV1 a 0 1\nR1 a 0 1k\n.control\n.TRAN 1u 1m\n.endc\n.end\n"))
                .containsExactly("""
                        deck.cir:5: error: the dot line .TRAN stands in the control block [forbidden-command]
                          .TRAN 1u 1m
                          ^^^^^
                          Why: the simulator knows no such command and runs no analysis: dot lines belong outside the control block
                          Write: the line before .control and run in the block, or the analysis without its dot""");
    }

    @Test
    void lineEndsOfTwoCarriageReturnsAreOneFinding() {
        String deck = "* t\nV1 a 0 1\nR1 a 0 1k\n.op\n.end\n";
        assertThat(Decks.messages(deck.replace("\n", "\r\r\n"))).containsExactly("""
                        deck.cir:1: error: 5 lines of the file end in more than one carriage return (U+000D) [control-character]
                          * t?
                             ^
                          Why: the simulator drops them, other programs read an empty line behind each line
                          Write: the file again, saved with LF line ends""");
        assertThat(Decks.rules(deck.replace("R1", "\rR1"))).contains("control-character:3");
        assertThat(Decks.rules(deck.replace("1k\n", "1k\r.endc\r\r\n"))).contains("control-character:3");
    }

    @Test
    void aClosingControlZIsLeftOut() {
        String deck = "* t\nV1 a 0 1\nR1 a 0 1k\n.op\n.end\n";
        assertThat(Decks.rules(deck + "\u001a")).isEmpty();
        assertThat(Decks.rules((deck + "\u001a\n").replace("\n", "\r\n"))).isEmpty();
        assertThat(Decks.rules(deck.replace(".end\n", ".end\u001a"))).contains("control-character:5");
        assertThat(Decks.rules(deck.replace(".op", "\u001a\n.op"))).contains("control-character:4");
    }

    @Test
    void aFileOfModelsNeedsNeither() {
        assertThat(Decks.rules("* parts\n.model dm d(is=1e-14)\n.subckt half p q\nD1 p q dm\n.ends\n"))
                .isEmpty();
    }

    @Test
    void aFileOfModelsHasNoTitleEither() {
        assertThat(Decks.rules(".subckt half p q\nD1 p q dm\n.ends\n.model dm d(is=1e-14)\n"))
                .isEmpty();
        assertThat(Decks.rules(".model dm d(is=1e-14)\nV1 a 0 1\nD1 a 0 dm\n.op\n.end\n"))
                .containsExactly("swallowed-title:1", "missing-model:3");
    }

    @Test
    void interpolatedOutputIsAnError() {
        assertThat(Decks.messages("* t\nV1 a 0 1\nR1 a 0 1k\n.options method=gear interp\n.op\n.end\n"))
                .containsExactly("""
                        deck.cir:4: error: interp puts the output on the print grid [interpolated-output]
                          .options method=gear interp
                                               ^^^^^^
                          Why: the points at the switching edges are lost: an rms current was 24 % high in one run
                          Write: no interp; a shorter run or fewer saved vectors where the file is too large""");
    }

    @Test
    void trapezoidalIntegrationOfADeckWithSwitchesIsTold() {
        String deck = """
                * switched
                V1 a 0 1
                V2 g 0 PULSE(0 1 0 10n 10n 5u 10u)
                S1 a b g 0 hard
                R1 b 0 1k
                .model hard sw(vt=0.5)
                .options METHOD
                .save v(b)
                .tran 1u 1m
                .end
                """;
        assertThat(Decks.messages(deck.replace("METHOD", "method=trap"))).containsExactly("""
                        deck.cir:7: warning: a deck with switches is integrated by the trapezoidal rule [trapezoidal-switching]
                          .options method=trap
                                          ^^^^
                          Why: it rings at hard edges: such decks stop with a time step too small, or end normally with more power out than in
                          Write: .options method=gear""");
        assertThat(Decks.rules(deck.replace("METHOD", "reltol=1e-4"))).containsExactly("trapezoidal-switching:9");
        assertThat(Decks.rules(deck.replace("METHOD", "METHOD = Gear"))).isEmpty();
        assertThat(Decks.rules(deck.replace(".options METHOD", ".control\noption method=gear\n.endc")))
                .isEmpty();
    }

    @Test
    void aTransientAnalysisThatKeepsEverythingIsTold() {
        assertThat(Decks.messages("* t\nV1 a 0 1\nR1 a 0 1k\n.tran 1u 1m\n.end\n"))
                .containsExactly("""
                        deck.cir:4: warning: no .save says which vectors are needed [missing-save]
                          .tran 1u 1m
                          ^^^^^^^^^^^
                          Why: every node and current is kept for every time step: more memory, and up to a quarter more run time
                          Write: .save with the vectors that are written or measured""");
    }

    @Test
    void anInitialConditionIsUsedWithUicInTheControlBlockToo() {
        assertThat(
                        Decks.rules(
                                "* t\nV1 a 0 1\nR1 a b 1k\nC1 b 0 1u ic=5\n.save v(b)\n.control\ntran 1u 1m uic\n.endc\n.end\n"))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "R1 a 0 1k",
                "D1 a 0 dm",
                "S1 a 0 a 0 sm",
                "X1 a 0 box",
                "B1 a 0 V=1",
                ".tran 1u 1m",
                "+ ic=3",
                ".include parts.inc",
                "V9 a 0 PULSE(0 1 0 1n 1n 1u 2u)",
                "R1 a 0 {x}"
            })
    void codeInTheFirstLineIsFound(String title) {
        assertThat(Decks.rules(title + body())).containsExactly("swallowed-title:1");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "* R1 a 0 1k",
                "Stairwell lamp 230 V 7 W",
                "Report for lamp 3",
                "A boundary stage at 0 degrees",
                "",
                ".title a lamp",
                "Lamp a b c"
            })
    void aTitleIsNotAccused(String title) {
        assertThat(Decks.rules(title + body())).isEmpty();
    }

    private static String body() {
        return """

                V1 a 0 1
                R2 a 0 1k
                D2 a 0 dm
                S2 a 0 a 0 sm
                X2 a 0 box
                .model dm d
                .model sm sw
                .subckt box p q
                R1 p q 1k
                .ends
                .op
                .end
                """;
    }
}
