package lampproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lampproof.rule.RuleJudgement;
import lampproof.rule.RuleVerdict;
import org.junit.jupiter.api.Test;

class RuleTextTest {

    private static final RuleVerdict BROKEN = new RuleVerdict("noise", false, "a rule", "70 dBuV", "at most 60 dBuV");
    private static final RuleVerdict QUIET = new RuleVerdict("noise", true, "a rule", "50 dBuV", "at most 60 dBuV");
    private static final RuleVerdict LOUD = new RuleVerdict("noise", false, "a rule", "71 dBuV", "at most 60 dBuV");
    private static final RuleText TEXT = new RuleText(Style.PLAIN);

    @Test
    void onlyARuleThatIsNotKeptHasALine() {
        assertThat(TEXT.summary(List.of(alone(QUIET), alone(BROKEN)))).isEqualTo("""
                rules: 1 of 2 kept
                  NOT KEPT  noise 70 dBuV, at most 60 dBuV
                """);
    }

    @Test
    void aSimulatedValueStandsBesideThePredictedOne() {
        assertThat(TEXT.summary(List.of(both(BROKEN, LOUD)))).isEqualTo("""
                rules: 0 of 1 kept
                  NOT KEPT  noise 70 dBuV (simulated 71 dBuV), at most 60 dBuV
                """);
    }

    @Test
    void anEditedCircuitThatKeepsARuleIsSaidToKeepIt() {
        assertThat(TEXT.summary(List.of(both(BROKEN, QUIET)))).isEqualTo("""
                rules: 1 of 1 kept
                  kept  noise simulated 50 dBuV, at most 60 dBuV; the prediction is not kept, 70 dBuV, at most 60
                            dBuV
                """);
    }

    private static RuleJudgement alone(RuleVerdict predicted) {
        return new RuleJudgement(predicted, Optional.empty());
    }

    private static RuleJudgement both(RuleVerdict predicted, RuleVerdict simulated) {
        return new RuleJudgement(predicted, Optional.of(simulated));
    }
}
