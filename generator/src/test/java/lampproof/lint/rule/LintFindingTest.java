package lampproof.lint.rule;

import static org.assertj.core.api.Assertions.assertThat;

import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.SourceLine;
import org.junit.jupiter.api.Test;

class LintFindingTest {

    @Test
    void theMarkStandsUnderTheFaultEvenBehindATab() {
        assertThat(finding("R1\ta 0 1M", 7, 9).text()).isEqualTo("""
                        deck.cir:7: error: what [a-rule]
                          R1 a 0 1M
                                 ^^
                          Why: why
                          Write: write""");
    }

    @Test
    void ofALongLineTheStretchRoundTheFaultIsShown() {
        String text = finding("x ".repeat(5000) + "1M", 10_000, 10_002).text();
        assertThat(text.lines().skip(1).limit(2).toList())
                .containsExactly("  " + "x ".repeat(15) + "1M", " ".repeat(32) + "^^");
    }

    @Test
    void aLineCannotSteerTheTerminal() {
        assertThat(finding("R1 \u001b[2J a 0 1M", 14, 16).text())
                .doesNotContain("\u001b")
                .contains("R1 ?[2J a 0 1M");
    }

    private static LintFinding finding(String line, int from, int to) {
        SourceLine source = new SourceLine("deck.cir", 7, line);
        return new LintFinding("a-rule", Severity.ERROR, Place.of(source, from, to), "what", "why", "write");
    }
}
