package lampproof.lint.rule;

import static org.assertj.core.api.Assertions.assertThat;

import lampproof.lint.Decks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults of the circuit itself. */
class CircuitRulesTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "R1 in mid 1k",
                "L1 in mid 1m",
                "V2 mid 0 1",
                "E1 mid 0 in 0 2",
                "H1 mid 0 V1 2",
                "B1 mid 0 V=v(in)",
                "D1 in mid dm",
                "D1 mid in dm",
                "S1 in mid in 0 sm",
                "W1 in mid V1 wm",
                "Q1 in mid 0 qm",
                "M1 in in mid 0 mm",
                "M1 in in mid vm",
                "J1 in 0 mid jm",
                "G1 mid 0 mid 0 1m",
                "B1 mid 0 I=v(mid)/1k",
                "T1 in 0 mid 0 z0=50 td=1n",
                "X1 mid nowhere",
                "A1 [in] mid am"
            })
    void whatConductsIsADcPath(String line) {
        assertThat(Decks.rules(deck(line))).noneMatch(rule -> rule.startsWith("no-dc-path"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "C1 in mid 1u",
                "E1 in2 0 mid 0 2\nR5 in2 0 1",
                "S1 in 0 mid 0 sm",
                "M1 in mid 0 0 mm",
                "B1 q 0 V=v(mid)\nR5 q 0 1"
            })
    void whatOnlySensesOrBlocksIsNone(String line) {
        assertThat(Decks.rules(deck(line))).anyMatch(rule -> rule.startsWith("no-dc-path"));
    }

    private static String deck(String line) {
        return """
                * one node
                V1 in 0 10
                R9 in 0 1k
                C9 mid 0 1u
                LINE
                .model dm d
                .model sm sw
                .model wm csw
                .model qm npn
                .model mm nmos
                .model vm vdmos(nchan)
                .model jm njf
                .model am d_buffer
                .op
                .end
                """.replace("LINE", line);
    }

    @Test
    void nodesThatFloatTogetherAreToldOnce() {
        assertThat(Decks.messages("""
                        * isolated side of a transformer
                        V1 p 0 SIN(0 325 50)
                        L1 p 0a 1m
                        R1 0a 0 1
                        L2 s1 s2 1m
                        K1 L1 L2 0.99
                        R2 s2 s3 1k
                        R3 s3 s4 1k
                        R4 s4 s1 1k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:5: error: nodes s1, s2, s3 and 1 more have no DC path to node 0 [no-dc-path]
                          L2 s1 s2 1m
                             ^^
                          Why: the operating point is not defined there: the simulator reports a singular matrix, invents a voltage or stops
                          Write: a resistor of 1e9 to 1e12 ohm from s1 to 0""");
    }

    @Test
    void underUicAFloatingNodeIsOnlyAWarning() {
        assertThat(Decks.messages("""
                        * series
                        V1 in 0 SIN(0 10 50)
                        R1 in a 1
                        C1 a mid 1u
                        C2 mid 0 1u
                        .save v(mid)
                        .tran 1u 1m uic
                        .end
                        """)).containsExactly("""
                        deck.cir:4: warning: node mid has no DC path to node 0 [no-dc-path]
                          C1 a mid 1u
                               ^^^
                          Why: the voltage there follows from the initial conditions alone and drifts with every rounding error
                          Write: a resistor of 1e9 to 1e12 ohm from mid to 0""");
    }

    @Test
    void aCurrentSourceIntoACapacitorHasNowhereToGo() {
        String timer = """
                * timer without discharge
                I1 0 ramp 1u
                C1 ramp 0 1p
                .save v(ramp)
                .tran 1u 1m
                .end
                """;
        assertThat(Decks.messages(timer)).containsExactly("""
                        deck.cir:2: error: node ramp is fed by I1 and cut off from node 0 by capacitors and current sources [current-cut-set]
                          I1 0 ramp 1u
                               ^^^^
                          Why: at the operating point its current has nowhere to go: the simulator reports a singular matrix or invents a voltage
                          Write: a resistor or a switch from ramp to 0 that can carry the current""");
        assertThat(Decks.messages(timer.replace("1m\n", "1m uic\n"))).containsExactly("""
                        deck.cir:2: warning: node ramp is fed by I1 and cut off from node 0 by capacitors and current sources [current-cut-set]
                          I1 0 ramp 1u
                               ^^^^
                          Why: its current charges the capacitors without end
                          Write: a resistor or a switch from ramp to 0 that can carry the current""");
        assertThat(Decks.rules(timer.replace("C1 ramp 0 1p", "I2 ramp 0 2u"))).containsExactly("current-cut-set:2");
    }

    @Test
    void aLoopOfVoltageSourcesIsToldWithItsMembers() {
        assertThat(Decks.messages("""
                        * loop
                        V1 a 0 10
                        V2 b a 1
                        Eload b 0 a 0 1
                        R1 b 0 1k
                        .save v(b)
                        .tran 1u 1m uic
                        .end
                        """)).containsExactly("""
                        deck.cir:4: error: V2, V1, Eload form a loop of voltage sources [source-loop]
                          Eload b 0 a 0 1
                          ^^^^^^^^^^^^^^^
                          Why: the current round the loop is not defined: the simulator reports a singular matrix and stops or invents one
                          Write: a resistance in the loop, for example 1e-3 ohm in series with Eload""");
    }

    @Test
    void anInductorAcrossASourceIsALoopOnlyAtTheOperatingPoint() {
        String deck = "* t\nV1 a 0 1\nL1 a 0 1m\n.save i(L1)\n.tran 1u 1m\n.end\n";
        assertThat(Decks.rules(deck)).containsExactly("source-loop:3");
        assertThat(Decks.messages(deck).get(0)).contains("V1, L1 form a loop of voltage sources and inductors");
        assertThat(Decks.rules(deck.replace("1m\n.end", "1m uic\n.end"))).isEmpty();
        assertThat(Decks.messages("* t\nV1 a 0 1\nR1 a b 1\nL1 b 0 1m\nL2 b 0 1m\n.op\n.end\n")
                        .get(0))
                .contains("L1, L2 form a loop of inductors");
    }

    @Test
    void aSourceBetweenOneNodeIsShorted() {
        assertThat(Decks.messages("* t\nV1 a 0 1\nR1 a 0 1\nV2 a A 0\n.op\n.end\n"))
                .anyMatch(text -> text.contains("V2 is connected with both ends to one node"));
    }

    @Test
    void aNodeWithOneConnectionIsToldUnlessItsVoltageIsWanted() {
        String deck = """
                * misspelt
                V1 in 0 10
                R1 in out 1k
                R2 ouut 0 1k
                B1 power 0 V=v(in)*i(V1)
                .save v(power)
                .op
                .end
                """;
        assertThat(Decks.rules(deck)).containsExactly("one-connection:3", "one-connection:4");
        assertThat(Decks.messages(deck).get(1)).isEqualTo("""
                        deck.cir:4: warning: node ouut has one connection [one-connection]
                          R2 ouut 0 1k
                             ^^^^
                          Why: a name is misspelt or a part is missing: no current can flow here
                          Write: the name of the node that was meant, or the missing part""");
    }

    @Test
    void aLatchThatReadsTheNodeBehindItsFilterIsRight() {
        String latch = """
                * latch
                B1 want 0 V = v(gate) > 0.5 ? 0 : 1
                R1 want gate 1e3
                C1 gate 0 20e-12
                .op
                .end
                """;
        assertThat(Decks.rules(latch)).isEmpty();
        assertThat(Decks.rules(latch.replace("v(gate)", "v(WANT)")))
                .containsExactly("letter-case:2", "step-on-own-output:2");
        assertThat(Decks.rules(latch.replace("v(gate)", "i(b1)"))).containsExactly("step-on-own-output:2");
        assertThat(Decks.rules(latch.replace("v(gate) > 0.5 ? 0 : 1", "1 - v(want)")))
                .isEmpty();
        assertThat(Decks.rules("* t\nB1 a 0 I = v(a) > 400 ? (v(a) - 400) / 10 : 0\nV1 b 0 1\nR1 a b 1\n.op\n.end\n"))
                .isEmpty();
    }

    @Test
    void aSourceMayLieAcrossACapacitorThatStartsAtItsVoltage() {
        assertThat(acrossCapacitor("V1 a 0 300", "C1 a 0 1u ic=300")).isEqualTo(0);
        assertThat(acrossCapacitor("V1 a 0 SIN(0 325 50)", "C1 a 0 1u")).isEqualTo(0);
        assertThat(acrossCapacitor("V1 a 0 PULSE(0 10 0 1n 1n 1u 2u)", "C1 a 0 1u"))
                .isEqualTo(0);
        assertThat(acrossCapacitor("V1 a 0 {start}", "C1 a 0 1u")).isEqualTo(0);
        assertThat(acrossCapacitor("V1 a 0 300\n.ic v(a)=300", "C1 a 0 1u")).isEqualTo(0);
        assertThat(acrossCapacitor("V1 b 0 100\nV2 a b 200", "C1 a 0 1u ic=300"))
                .isEqualTo(0);
        assertThat(acrossCapacitor("V1 a 0 300\nR2 a c 1", "C1 c 0 1u")).isEqualTo(0);
    }

    @Test
    void aSourceMayNotLieAcrossACapacitorThatStartsElsewhere() {
        assertThat(acrossCapacitor("V1 a 0 SIN(0 325 50 0 0 90)", "C1 a 0 1u")).isEqualTo(1);
        assertThat(acrossCapacitor("V1 a 0 PULSE(5 10 0 1n 1n 1u 2u)", "C1 a 0 1u"))
                .isEqualTo(1);
        assertThat(acrossCapacitor("V1 a 0 PWL(0 5 1 6)", "C1 a 0 1u")).isEqualTo(1);
        assertThat(acrossCapacitor("V1 a b DC 300\nV2 b 0 0", "C1 0 a 1u ic=300"))
                .isEqualTo(1);
        assertThat(acrossCapacitor("V1 a 0 {crest}\n.param crest=325", "C1 a 0 1u"))
                .isEqualTo(1);
    }

    private static long acrossCapacitor(String source, String capacitor) {
        return Decks.rules("* t\n" + source + "\n" + capacitor + "\n.save v(a)\n.tran 1u 1m uic\n.end\n").stream()
                .filter(rule -> rule.startsWith("source-across-capacitor"))
                .count();
    }
}
