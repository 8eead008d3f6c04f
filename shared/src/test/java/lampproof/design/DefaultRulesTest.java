package lampproof.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lampproof.spec.Entry;
import lampproof.spec.Origin;
import lampproof.spec.SpecRow;
import lampproof.spec.Vocabulary;
import org.junit.jupiter.api.Test;

class DefaultRulesTest {

    @Test
    void every_row_has_a_rule_unless_it_is_required() {
        for (Entry entry : Vocabulary.entries()) {
            assertThat(DefaultRules.of(entry).isEmpty())
                    .as(entry.name())
                    .isEqualTo(Vocabulary.required().contains(entry.name()));
        }
    }

    @Test
    void the_rules_are_those_beside_the_values_of_a_design() {
        for (Law law : Law.values()) {
            for (SpecRow row : Sizing.of(Lamps.stepDown(law)).values().rows()) {
                if (row.origin() == Origin.DEFAULT) {
                    assertThat(rules(row.name())).contains(row.note());
                }
            }
        }
    }

    @Test
    void a_rule_that_depends_on_other_rows_is_listed_for_each_of_them() {
        assertThat(rules("switching.max_on_time"))
                .containsExactlyInAnyOrder(
                        "peak-current control: 90 % of the period", "fixed-off-time control: twice the crest period");
        assertThat(rules("driver.control")).containsExactly("boundary: simplest with a good power factor");
        assertThat(rules("tolerance.mean")).isEqualTo(rules("tolerance.switch.current.peak"));
    }

    private static List<String> rules(String name) {
        return DefaultRules.of(Vocabulary.find(name).orElseThrow());
    }
}
