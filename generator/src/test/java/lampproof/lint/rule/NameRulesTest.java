package lampproof.lint.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import lampproof.lint.Decks;
import lampproof.lint.Linter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Faults in names of nodes, models, subcircuits, files and vectors. */
class NameRulesTest {

    @TempDir
    Path folder;

    @Test
    void nodesThatDifferOnlyInLetterCaseAreOneNode() {
        assertThat(Decks.messages("""
                        * letter case
                        V1 bus 0 1
                        R1 bus BUS 1k
                        R2 BUS 0 1k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: warning: node BUS is the same node as bus in line 2 [letter-case]
                          R1 bus BUS 1k
                                 ^^^
                          Why: letter case is ignored, so two nodes that were meant to be apart are connected
                          Write: bus where the same node is meant, another name where not""");
    }

    @Test
    void oneNameForTwoModelsSubcircuitsOrParametersIsTold() {
        assertThat(Decks.rules("""
                        * twice
                        .param x=1
                        .param X=2
                        .model dm d(is=1e-14)
                        .model DM d(is=1e-10)
                        .subckt box p
                        R1 p 0 1k
                        .ends
                        .subckt box p
                        R1 p 0 3k
                        .ends
                        V1 a 0 {x}
                        D1 a 0 dm
                        X1 a box
                        .op
                        .end
                        """)).containsExactly("duplicate-name:3", "duplicate-name:5", "duplicate-name:9");
    }

    @Test
    void namesMayBeUsedAgainInAnotherSubcircuit() {
        assertThat(Decks.rules("""
                        * scopes
                        V1 a 0 1
                        R1 a 0 1k
                        X1 a one
                        .subckt one p
                        R1 p 0 1k
                        .ends
                        .op
                        .end
                        """)).isEmpty();
    }

    @Test
    void aMissingModelIsToldWithTheElementThatNamesIt() {
        assertThat(Decks.messages("""
                        * models
                        V1 a 0 1
                        D1 a 0 rectifier
                        D2 a 0
                        R1 a 0 rload
                        R2 a 0 given
                        .param given=1k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: diode D1 names the model rectifier, which is not defined [missing-model]
                          D1 a 0 rectifier
                                 ^^^^^^^^^
                          Why: the simulator stops
                          Write: .model rectifier with its parameters, or .include of the file that holds it""", """
                        deck.cir:4: error: diode D2 names no model [missing-model]
                          D2 a 0
                          ^^^^^^
                          Why: the simulator stops, or takes a node for the model
                          Write: the model's name behind the last node""", """
                        deck.cir:5: error: resistor R1 names the model rload, which is not defined [missing-model]
                          R1 a 0 rload
                                 ^^^^^
                          Why: the simulator stops
                          Write: .model rload with its parameters, or .include of the file that holds it""");
    }

    @Test
    void aModelIsSeenInItsOwnSubcircuitAndTheScopesAroundIt() {
        assertThat(Decks.rules("""
                        * scopes
                        V1 a 0 1
                        X1 a box
                        D9 a 0 inner
                        .model outer d
                        .subckt box p
                        D1 p 0 inner
                        D2 p 0 OUTER
                        .model inner d
                        .ends
                        .op
                        .end
                        """)).containsExactly("missing-model:4");
    }

    @Test
    void aMissingSubcircuitAndAWrongNumberOfNodesAreTold() {
        assertThat(Decks.messages("""
                        * subcircuits
                        V1 a 0 1
                        X1 a 0 nowhere
                        X2 a 0 0 box
                        .subckt box p q
                        R1 p q 1k
                        .ends
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: X1 uses the subcircuit nowhere, which is not defined [missing-subcircuit]
                          X1 a 0 nowhere
                                 ^^^^^^^
                          Why: the simulator stops
                          Write: .subckt nowhere with its ports, or .include of the file that holds it""", """
                        deck.cir:4: error: X2 connects 3 nodes to the 2 ports of box [port-count]
                          X2 a 0 0 box
                          ^^^^^^^^^^^^
                          Why: the simulator stops; with the right number, a wrong order runs and gives wrong figures
                          Write: one node for each port, in the order p q""");
    }

    @Test
    void parametersOfASubcircuitAreNoPorts() {
        assertThat(Decks.rules("""
                        * parameters
                        V1 a 0 1
                        X1 a 0 box params: r=2k
                        X2 a 0 box r=3k
                        .subckt box p q params: r=1k
                        R1 p q {r}
                        .ends
                        .op
                        .end
                        """)).isEmpty();
    }

    @Test
    void aSubcircuitThatContainsItselfIsTold() {
        assertThat(Decks.messages("""
                        * no end
                        V1 a 0 1
                        X1 a 0 box
                        .subckt box p q
                        R1 p q 1k
                        X1 p q box
                        .ends
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:6: error: the subcircuit box contains itself [recursive-subcircuit]
                          X1 p q box
                                 ^^^
                          Why: the circuit has no end: the simulator gives up after some levels and stops
                          Write: the subcircuit that was meant""");
    }

    @Test
    void aMissingIncludeIsToldAloneWithoutWhatItWouldHaveHeld() throws Exception {
        Path deck = Files.writeString(
                folder.resolve("deck.cir"),
                "* t\n.include parts.inc\nV1 a 0 1\nD1 a 0 rectifier\nX1 a 0 fet\n.save v(x1.gate)\n.op\n.end\n");
        assertThat(Linter.check(deck)).extracting(LintFinding::rule).containsExactly("missing-include");
        assertThat(Linter.check(deck).get(0).text()).isEqualTo("""
                        %s:2: error: there is no file parts.inc [missing-include]
                          .include parts.inc
                                   ^^^^^^^^^
                          Why: the simulator stops
                          Write: a file name relative to the deck's folder, and the file beside the deck""".formatted(deck));
    }

    @Test
    void aFileNameWithABlankIsTold() {
        assertThat(Decks.rules("* t\n.include my parts.inc\n.include \"my parts.inc\"\n.include \"parts.inc\"\n"))
                .containsExactly("blank-in-file-name:2", "blank-in-file-name:3");
    }

    @Test
    void vectorsThatTheCircuitDoesNotHaveAreTold() {
        String deck = """
                * vectors
                V1 a 0 1
                R1 a b 1k
                X1 b box
                .subckt box p
                Vmeter p mid 0
                R1 mid 0 1k
                .ends
                .control
                op
                wrdata out.txt v(a) v(nope)
                wrdata out.txt v(a,x1.mid) i(v1) i(v.x1.vmeter) i(R1) i(Vmeter) v(0)
                .endc
                .end
                """;
        assertThat(Decks.messages(deck)).containsExactly("""
                        deck.cir:11: error: there is no node nope [unknown-vector]
                          wrdata out.txt v(a) v(nope)
                                                ^^^^
                          Why: the simulator then writes no file at all, with one line in the log, and an older file is taken for the result
                          Write: the name of a node of this circuit; inside a subcircuit, x1.node""", """
                        deck.cir:12: error: the simulator keeps no current of the resistor r1 [unknown-vector]
                          wrdata out.txt v(a,x1.mid) i(v1) i(v.x1.vmeter) i(R1) i(Vmeter) v(0)
                                                                            ^^
                          Why: the simulator then writes no file at all, with one line in the log, and an older file is taken for the result
                          Write: a voltage source of 0 V in series as an ammeter, and its current""", """
                        deck.cir:12: error: there is no element vmeter [unknown-vector]
                          wrdata out.txt v(a,x1.mid) i(v1) i(v.x1.vmeter) i(R1) i(Vmeter) v(0)
                                                                                  ^^^^^^
                          Why: the simulator then writes no file at all, with one line in the log, and an older file is taken for the result
                          Write: the name of a voltage source or inductor; inside a subcircuit, v.x1.vmeter""");
    }

    @Test
    void aSavedVectorThatDoesNotExistIsOnlyAWarning() {
        assertThat(Decks.messages("* t\nV1 a 0 1\nR1 a 0 1\n.save v(a) v(nope)\n.op\n.end\n"))
                .containsExactly("""
                        deck.cir:4: warning: there is no node nope [unknown-vector]
                          .save v(a) v(nope)
                                       ^^^^
                          Why: the simulator leaves it out with at most a line in the log
                          Write: the name of a node of this circuit; inside a subcircuit, x1.node""");
    }
}
