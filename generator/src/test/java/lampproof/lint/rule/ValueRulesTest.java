package lampproof.lint.rule;

import static org.assertj.core.api.Assertions.assertThat;

import lampproof.lint.Decks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults in values. */
class ValueRulesTest {

    @ParameterizedTest
    @CsvSource({
        "1Mohm, scale-letter", "2.2MV, scale-letter", "{2*1M}, scale-letter", "1e-6f, scale-letter", "5A, scale-letter",
        "5amp, scale-letter", "4k7, unread-tail", "2u2, unread-tail", "{4k7}, unread-tail", "1.5.2, unread-tail",
        "NaN, not-a-number", "-inf, not-a-number", "Infinity, not-a-number", "1.#INF, not-a-number",
                "{{X}}, placeholder",
        "${x}, placeholder", "<#if x>, placeholder", "[=x], placeholder"
    })
    void aDoubtfulValueIsFound(String value, String rule) {
        assertThat(Decks.rules(deck(value))).contains(rule + ":3");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1k",
                "1meg",
                "1MEG",
                "1Megohm",
                "10m",
                "10mohm",
                "4.7u",
                "4.7uF",
                "1e6",
                "1e-15",
                "10p",
                "10pF",
                "2.5kOhm",
                ".1",
                "1G",
                "5V",
                "{x}",
                "'x*2'",
                "{x*1e-6 + 3m}",
                "-5",
                "1e3Hz",
                "r={x}",
                "1k tc1=1m"
            })
    void aSoundValueIsNot(String value) {
        assertThat(Decks.rules(deck(value))).isEmpty();
    }

    private static String deck(String value) {
        return "* values\nV1 a 0 1\nR1 a 0 " + value + "\n.param x=1k\n.op\n.end\n";
    }

    @Test
    void valuesAreReadWhereverTheyStand() {
        assertThat(Decks.rules("""
                        * everywhere
                        .param high=1M
                        V1 a 0 PULSE(0 10 1M 10n 10n 5u 10u)
                        B1 b 0 V = v(a) * 1M + v(1M)
                        D1 b 0 dm
                        .model dm d(rs=1M cjo=1F)
                        R1 1M 0 1k
                        R2 1M b 1k
                        .ic v(a)=1M
                        .save v(a)
                        .tran 1M 1
                        .control
                        let y = 1M * v(a)
                        .endc
                        .end
                        """))
                .containsExactly(
                        "scale-letter:2",
                        "scale-letter:3",
                        "scale-letter:4",
                        "scale-letter:6",
                        "scale-letter:6",
                        "scale-letter:9",
                        "scale-letter:11",
                        "scale-letter:13");
    }

    @Test
    void inALineAllInCapitalsMegaIsOnlyAWarning() {
        String deck = "* t\nV1 a 0 1\nD1 a 0 dm\n.MODEL DM D(RS=42M)\n.op\n.end\n";
        assertThat(Decks.messages(deck)).containsExactly("""
                        deck.cir:4: warning: 42M is 42e-3: M is milli, as m is [scale-letter]
                          .MODEL DM D(RS=42M)
                                         ^^^
                          Why: letter case is ignored, so a value meant as mega is a factor of 1e9 too small
                          Write: 42e6 for mega, 42e-3 for milli""");
    }

    @Test
    void infixLettersAreToldWithTheNumberThatWasMeant() {
        assertThat(Decks.messages(deck("4k7"))).containsExactly("""
                        deck.cir:3: error: 4k7 is read only as far as 4k [unread-tail]
                          R1 a 0 4k7
                                 ^^^
                          Why: the simulator drops the rest without a message, and versions differ in where they stop
                          Write: 4.7k""");
        assertThat(Decks.messages(deck("2R2")).get(0)).endsWith("Write: 2.2");
    }

    @Test
    void scalesThatCountTwiceOrOnlyInSomeVersionsAreWarnings() {
        assertThat(Decks.messages(deck("1e3k"))).containsExactly("""
                        deck.cir:3: warning: 1e3k is scaled twice, to 1.00e+06 [scale-letter]
                          R1 a 0 1e3k
                                 ^^^^
                          Why: the exponent and the letter behind it both count
                          Write: the exponent alone""");
        assertThat(Decks.messages(deck("5A"))).containsExactly("""
                        deck.cir:3: warning: 5A ends in a unit letter that is a scale: A is atto in newer versions of ngspice [scale-letter]
                          R1 a 0 5A
                                 ^^
                          Why: the value is then a factor of 1e18 too small
                          Write: 5""");
    }

    @Test
    void thePrintOfAFailedCalculationIsTold() {
        assertThat(Decks.messages(deck("NaN"))).containsExactly("""
                        deck.cir:3: error: NaN is no number [not-a-number]
                          R1 a 0 NaN
                                 ^^^
                          Why: the calculation behind this value failed; the simulator stops, or takes the word as a model's name
                          Write: the value, after correction of its calculation""");
    }

    @Test
    void partsWithoutAValueAreTold() {
        String deck = "* t\nV1 a 0 1\nR1 a 0\nC1 a 0 ic=1\nL1 a b m=2\nR2 b 0 1\n.op\n.end\n";
        assertThat(Decks.messages(deck)).containsExactly("""
                        deck.cir:3: error: resistor R1 has no value [missing-value]
                          R1 a 0
                          ^^^^^^
                          Why: the simulator takes 1 milliohm and goes on with wrong figures
                          Write: the value behind the second node""", """
                        deck.cir:4: error: capacitor C1 has no value [missing-value]
                          C1 a 0 ic=1
                          ^^^^^^^^^^^
                          Why: the simulator takes 0 and goes on with wrong figures
                          Write: the value behind the second node""", """
                        deck.cir:5: error: inductor L1 has no value [missing-value]
                          L1 a b m=2
                          ^^^^^^^^^^
                          Why: the simulator takes 0 and goes on with wrong figures
                          Write: the value behind the second node""");
    }

    @Test
    void aSecondValueIsTold() {
        assertThat(Decks.messages(deck("1k 5"))).containsExactly("""
                        deck.cir:3: error: R1 has a second value, 5 [second-value]
                          R1 a 0 1k 5
                                    ^
                          Why: the simulator takes the last one, without a message
                          Write: one value""");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PULSE(0,10,0,1n,1n,5u,10u)", "PWL(0,0,1,2)", "SIN(0,325,50)", "{max(1,2)}", "DC 1"})
    void aCommaBetweenArgumentsIsNoDecimalComma(String value) {
        assertThat(Decks.rules("* t\nV1 a 0 " + value + "\nR1 a 0 1k\n.op\n.end\n"))
                .isEmpty();
    }

    @Test
    void aDecimalCommaIsFoundInModelsAndParameters() {
        assertThat(Decks.rules("""
                        * commas
                        .param high=1,5
                        V1 a 0 {high}
                        D1 a 0 dm
                        .model dm d(is=1e-14,n=1,5)
                        .op
                        .end
                        """)).containsExactly("decimal-comma:2", "decimal-comma:5");
    }

    @Test
    void aParameterMayBeAnExpressionWithoutBraces() {
        assertThat(Decks.rules("* t\n.param a=3+b b=1k/2\nV1 a 0 {a}\nR1 a 0 {b}\n.op\n.end\n"))
                .isEmpty();
        assertThat(Decks.rules("* t\n.param a=3+4k7\nV1 a 0 {a}\nR1 a 0 1\n.op\n.end\n"))
                .containsExactly("unread-tail:2");
    }

    @Test
    void aMissingEdgeOfAPulseIsTold() {
        assertThat(Decks.messages("* t\nV1 a 0 DC 0 PULSE 0 10 0 10n\nR1 a 0 1k\n.op\n.end\n"))
                .containsExactly("""
                        deck.cir:2: error: the fall time of the pulse is missing [pulse-edges]
                          V1 a 0 DC 0 PULSE 0 10 0 10n
                                      ^^^^^
                          Why: the simulator takes the print step of .tran in its place, which stretches every pulse and with it the duty
                          Write: the edge times of the real driver, for example 10e-9 for both""");
        assertThat(Decks.rules("* t\nI1 0 a PULSE(0 10 0 {edge} {edge} 5u 10u)\nR1 a 0 1k\n.param edge=0\n.op\n.end\n"))
                .containsExactly("pulse-edges:2");
        assertThat(Decks.rules(
                        "* t\nI1 0 a PULSE(0 10 0 {edge} {edge} 5u 10u)\nR1 a 0 1k\n.param edge=5n\n.op\n.end\n"))
                .isEmpty();
    }

    @Test
    void letterOutsideAsciiIsFoundInCodeOnly() {
        assertThat(Decks.rules("* Gr\u00f6\u00dfe\nV1 a 0 1\nR\u00e4 a 0 1k\n* \u00b5\n.op\n.end\n"))
                .containsExactly("non-ascii:3");
    }
}
