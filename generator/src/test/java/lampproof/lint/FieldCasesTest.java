package lampproof.lint;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * Faults that engineers report from the field, in small decks with invented numbers, and every word that the linter says.
 */
class FieldCasesTest {

    @Test
    void megaWrittenAsCapitalM() {
        assertThat(Decks.messages("""
                        * bleeder on the bus
                        Vdc dc 0 325
                        Rbleed dc 0 1M
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: 1M is 1e-3: M is milli, as m is [scale-letter]
                          Rbleed dc 0 1M
                                      ^^
                          Why: letter case is ignored, so a value meant as mega is a factor of 1e9 too small
                          Write: 1e6 for mega, 1e-3 for milli""");
    }

    @Test
    void unitLettersBehindNumbers() {
        assertThat(Decks.messages("""
                        * unit letters
                        V1 a 0 1
                        C1 a 0 1e-6F
                        C2 a 0 1F
                        L1 a b 10mil
                        R1 b 0 1
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: 1e-6F is 1.00e-21: F is femto, not the unit farad [scale-letter]
                          C1 a 0 1e-6F
                                 ^^^^^
                          Why: a unit letter is read as a scale, so the value is a factor of 1e15 too small
                          Write: 1e-6""", """
                        deck.cir:4: error: 1F is 1e-15: F is femto, not the unit farad [scale-letter]
                          C2 a 0 1F
                                 ^^
                          Why: a unit letter is read as a scale, so the value is a factor of 1e15 too small
                          Write: 1""", """
                        deck.cir:5: error: 10mil is 10 times 25.4e-6: mil is a thousandth of an inch [scale-letter]
                          L1 a b 10mil
                                 ^^^^^
                          Why: a value meant as milli is a factor of 39 too small
                          Write: 10e-3 for milli""");
    }

    @Test
    void bothMicroSignsAndTheOhmSign() {
        assertThat(Decks.messages("""
                        * micro signs
                        V1 a 0 1
                        L1 a b 470\u00b5
                        L2 b c 470\u03bc
                        R1 c 0 1\u2126
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: '\u00b5' (U+00B5) is no ASCII letter [non-ascii]
                          L1 a b 470\u00b5
                                    ^
                          Why: ngspice reads this micro sign as 1e-6, gnucap as 1: a factor of a million between simulators
                          Write: u, or the exponent e-6""", """
                        deck.cir:4: error: '\u03bc' (U+03BC) is no ASCII letter [non-ascii]
                          L2 b c 470\u03bc
                                    ^
                          Why: ngspice and gnucap read this Greek letter as 1, so the value is a million times too large
                          Write: u, or the exponent e-6""", """
                        deck.cir:5: error: '\u2126' (U+2126) is no ASCII letter [non-ascii]
                          R1 c 0 1\u2126
                                  ^
                          Why: a unit is no part of a value, and not every simulator skips it
                          Write: the number alone""");
    }

    @Test
    void decimalComma() {
        assertThat(Decks.messages("""
                        * comma
                        V1 a 0 1
                        R1 a 0 1,5k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: the comma in 1,5k parts it into two words [decimal-comma]
                          R1 a 0 1,5k
                                 ^^^^
                          Why: a comma is a blank to the simulator: it takes one of the two numbers as the value, without a message
                          Write: 1.5k""");
    }

    @Test
    void firstLineSwallowedAsTitle() {
        assertThat(Decks.messages("""
                        V1 in 0 10
                        R1 in out 1k
                        R2 out 0 1k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:1: error: the first line is the title and is not simulated [swallowed-title]
                          V1 in 0 10
                          ^^^^^^^^^^
                          Why: the simulator takes line 1 as the title whatever it holds, so this line is lost without a message
                          Write: a title that begins with * as line 1, and this line below it""", """
                        deck.cir:2: warning: node in has one connection [one-connection]
                          R1 in out 1k
                             ^^
                          Why: a name is misspelt or a part is missing: no current can flow here
                          Write: the name of the node that was meant, or the missing part""");
    }

    @Test
    void groundUnderItsOtherName() {
        assertThat(Decks.messages("""
                        * ground
                        V1 a 0 10
                        R1 a b 1k
                        R2 b 0 1k
                        R3 b gnd 1k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:5: warning: gnd is ground in ngspice and an ordinary floating node in other simulators [ground-name]
                          R3 b gnd 1k
                               ^^^
                          Why: the same deck gives different figures there; as a port of a subcircuit it is ground whatever is connected
                          Write: 0, or another name where it is not ground""");
    }

    @Test
    void continuationWithABlankInFront() {
        assertThat(Decks.messages("""
                        * continued
                        V1 a 0 1
                        X1 a b c 0 ladder
                        Rb b 0 1k
                        Rc c 0 1k
                        .subckt ladder vdd
                        + tap1
                         + tap2 low
                        R1 vdd tap1 1k
                        R2 tap1 tap2 1k
                        R3 tap2 low 1k
                        .ends
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:8: warning: the line begins with a blank [leading-blank]
                           + tap2 low
                          ^
                          Why: some simulators take such a line as a comment: the element or continuation is lost there without a message
                          Write: the same line from column 1""");
    }

    @Test
    void leadingBlankAndCommentBehindCode() {
        assertThat(Decks.messages("""
                        * comment
                        V1 a 0 1
                        Rb b 0 1k
                         R1 a b 1k $ sense
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:4: warning: the line begins with a blank [leading-blank]
                           R1 a b 1k $ sense
                          ^
                          Why: some simulators take such a line as a comment: the element or continuation is lost there without a message
                          Write: the same line from column 1""", """
                        deck.cir:4: warning: a comment stands behind code [end-of-line-comment]
                           R1 a b 1k $ sense
                                     ^^^^^^^
                          Why: the marks $ ; and // begin a comment in one simulator and are part of the value or a variable in another
                          Write: the comment on a line of its own that begins with *""");
    }

    @Test
    void blanksAndQuotesInFileNames() {
        assertThat(Decks.messages("""
                        * files
                        V1 in 0 1
                        R1 in 0 1
                        .control
                        op
                        wrdata my out.txt v(in)
                        wrdata "q out.txt" v(in)
                        .endc
                        .end
                        """)).containsExactly("""
                        deck.cir:6: error: the blank before out.txt ends the file name [blank-in-file-name]
                          wrdata my out.txt v(in)
                                    ^^^^^^^
                          Why: the simulator takes this word as a vector that does not exist and writes no file, with one line in the log
                          Write: a file name of letters, digits, - and _""", """
                        deck.cir:7: error: the quotes become part of the file name [blank-in-file-name]
                          wrdata "q out.txt" v(in)
                                 ^^^^^^^^^^^
                          Why: the simulator writes a file whose name contains them, and the result is not found
                          Write: a file name of letters, digits, - and _, without quotes""");
    }

    @Test
    void placeholderLeftOver() {
        assertThat(Decks.messages("""
                        * template
                        V1 a 0 10
                        R1 a 0 @R_LOAD@
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: the placeholder @R_LOAD@ was never replaced [placeholder]
                          R1 a 0 @R_LOAD@
                                 ^^^^^^^^
                          Why: the simulator stops here, or reads the mark as no value and goes on with 1 milliohm
                          Write: the value itself""");
    }

    @Test
    void valuesWithRatingsAndBlanks() {
        assertThat(Decks.messages("""
                        * ratings
                        V1 a 0 1
                        C1 a 0 2.2 u X7R
                        C2 a 0 100nF/400V
                        C3 a 0 0,001uF
                        C4 a 0 .1uF
                        R1 a 0 22 k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: C1 has the word u behind its value [second-value]
                          C1 a 0 2.2 u X7R
                                     ^
                          Why: the simulator takes it as a parameter that it does not know, and stops
                          Write: the value in one word; a rating or a material in a comment line""", """
                        deck.cir:4: error: 100nF/400V is read only as far as 100nF [unread-tail]
                          C2 a 0 100nF/400V
                                 ^^^^^^^^^^
                          Why: the simulator drops the rest without a message, and versions differ in where they stop
                          Write: one number and nothing behind it""", """
                        deck.cir:5: error: the comma in 0,001uF parts it into two words [decimal-comma]
                          C3 a 0 0,001uF
                                 ^^^^^^^
                          Why: a comma is a blank to the simulator: it takes one of the two numbers as the value, without a message
                          Write: 0.001uF""", """
                        deck.cir:7: error: R1 has the word k behind its value [second-value]
                          R1 a 0 22 k
                                    ^
                          Why: the simulator takes it as a parameter that it does not know, and stops
                          Write: the value in one word; a rating or a material in a comment line""");
    }

    @Test
    void oneReferenceTwice() {
        assertThat(Decks.messages("""
                        * pasted twice
                        V1 in 0 1
                        R1 in out 1k
                        R1 in out 1k
                        R2 out 0 1k
                        r2 out 0 1k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:4: error: element R1 is already defined in line 3 [duplicate-name]
                          R1 in out 1k
                          ^^
                          Why: the simulator stops at the second one; others connect both, or keep one of them
                          Write: another name, or only one of the two""", """
                        deck.cir:6: error: element r2 is R2 again, defined in line 5 [duplicate-name]
                          r2 out 0 1k
                          ^^
                          Why: letter case is ignored in names; the simulator stops at the second one; others connect both, or keep one of them
                          Write: another name, or only one of the two""");
    }

    @Test
    void stepOnTheOwnOutput() {
        assertThat(Decks.messages("""
                        * step
                        V1 a 0 10
                        B1 b 0 V = v(a) > 2.5 ? (v(b) > 1 ? 0 : 5) : 0
                        R1 b 0 1k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: warning: B1 is conditional on its own output, no smooth transition [step-on-own-output]
                          B1 b 0 V = v(a) > 2.5 ? (v(b) > 1 ? 0 : 5) : 0
                                                     ^
                          Why: the iteration jumps between the branches and finds no solution: the time step shrinks to nothing
                          Write: a resistor and a capacitor behind the source, for example 1e3 ohm and 20e-12 F, and the node behind them here""");
    }

    @Test
    void zeroRiseTime() {
        assertThat(Decks.messages("""
                        * pulse
                        V1 a 0 PULSE(0 10 0 0 0 5u 10u)
                        R1 a 0 1k
                        .save v(a)
                        .tran 1u 100u
                        .end
                        """)).containsExactly("""
                        deck.cir:2: error: the rise time of the pulse is zero [pulse-edges]
                          V1 a 0 PULSE(0 10 0 0 0 5u 10u)
                                              ^
                          Why: the simulator takes the print step of .tran in its place, which stretches every pulse and with it the duty
                          Write: the edge times of the real driver, for example 10e-9 for both""");
    }

    @Test
    void sourceAcrossACapacitorUnderUic() {
        assertThat(Decks.messages("""
                        * inrush that is none
                        V1 a 0 300
                        C1 a 0 10u
                        .save i(V1)
                        .tran 1u 100u uic
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: C1 lies straight across a source that does not start at the capacitor's voltage [source-across-capacitor]
                          C1 a 0 10u
                          ^^^^^^^^^^
                          Why: uic skips the operating point, so the first step charges the capacitor with an impulse of current that looks like an inrush
                          Write: the capacitor's ic= at the source's first value, or the resistance that the circuit really has in between""");
    }

    @Test
    void initialConditionWithoutUic() {
        assertThat(Decks.messages("""
                        * precharged
                        C1 out 0 1u ic=300
                        V1 in 0 10
                        R1 in out 1k
                        .save v(out)
                        .tran 10u 5m
                        .end
                        """)).containsExactly("""
                        deck.cir:2: error: ic= without uic has no effect [unused-initial-condition]
                          C1 out 0 1u ic=300
                                      ^^
                          Why: the simulator starts from the operating point and drops the value without a message
                          Write: uic at the end of the .tran line, or .ic v(node)=value in place of ic=""");
    }

    @Test
    void nodeBetweenTwoCapacitors() {
        assertThat(Decks.messages("""
                        * capacitors in series
                        V1 in 0 10
                        C1 in mid 1u
                        C2 mid 0 1u
                        R2 in 0 1k
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:3: error: node mid has no DC path to node 0 [no-dc-path]
                          C1 in mid 1u
                                ^^^
                          Why: the operating point is not defined there: the simulator reports a singular matrix, invents a voltage or stops
                          Write: a resistor of 1e9 to 1e12 ohm from mid to 0""");
    }

    @Test
    void modelTextOfAnotherDialect() {
        assertThat(Decks.messages("""
                        * half understood
                        V1 a 0 1
                        R1 a b 1k
                        D1 b 0 rectifier
                        .model rectifier d(is=1e-14 vds=3)
                        S1 b 0 a 0 hard
                        .model hard sw(von=2 ron=1 roff=1e6)
                        .op
                        .end
                        """)).containsExactly("""
                        deck.cir:5: warning: a model of kind d has no parameter vds [unknown-model-parameter]
                          .model rectifier d(is=1e-14 vds=3)
                                                      ^^^
                          Why: the simulator ignores it with a remark in the log: the model is not the one that was meant
                          Write: nothing, or what d calls it: vj""", """
                        deck.cir:7: warning: a model of kind sw has no parameter von [unknown-model-parameter]
                          .model hard sw(von=2 ron=1 roff=1e6)
                                         ^^^
                          Why: the simulator ignores it with a remark in the log: the model is not the one that was meant
                          Write: nothing, or what sw calls it: level roff ron vh vt""");
    }
}
