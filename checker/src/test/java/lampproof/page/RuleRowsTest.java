package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lampproof.rule.RuleJudgement;
import lampproof.rule.RuleVerdict;
import org.junit.jupiter.api.Test;

class RuleRowsTest {

    private static final RuleVerdict RATING =
            new RuleVerdict("switch.voltage_rating", true, "derated in use, common practice", "70 % of 600 V", "");
    private static final RuleVerdict QUASI_PEAK = new RuleVerdict(
            "noise",
            RuleVerdict.Outcome.NOT_KEPT,
            "47 CFR 18.307, quasi-peak",
            "70 dBuV",
            "at most 63 dBuV",
            "the corner is 10.5 kHz");
    private static final RuleVerdict AVERAGE =
            new RuleVerdict("noise", true, "47 CFR 18.307, average", "40 dBuV", "at most 53 dBuV");

    private final RuleRows rows = RuleRows.of(List.of(
            RuleJudgement.predicted(RATING), RuleJudgement.predicted(QUASI_PEAK), RuleJudgement.predicted(AVERAGE)));

    @Test
    void brokenRulesComeFirstAndTheOthersAreCounted() {
        assertThat(rows.kept()).isEqualTo(2);
        assertThat(rows.rules()).extracting(RuleRows.Row::kept).containsExactly(false, true, true);
    }

    @Test
    void twoRulesOnOneSubjectHaveDifferentNames() {
        assertThat(rows.rules())
                .extracting(RuleRows.Row::subject)
                .containsExactly("noise, quasi-peak", "switch voltage", "noise, average");
    }

    @Test
    void theValueFoundStandsWithoutTheRemedy() {
        RuleRows.Row broken = rows.rules().get(0);
        assertThat(broken.found()).isEqualTo("70 dB\u00b5V, at most 63 dB\u00b5V");
        assertThat(broken.number()).isEqualTo(broken.found() + "; the corner is 10.5 kHz");
    }
}
