package lampproof.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpecTest {

    private static final SpecRow VOLTAGE = SpecRow.filledIn("line.voltage", new Amount(207, 230, 253), "a rule");
    private static final SpecRow TOPOLOGY = SpecRow.filledIn("driver.topology", new Word("step-up"), "");

    @Test
    void givesAmountsAndWordsByName() {
        Spec spec = Spec.of(List.of(TOPOLOGY, VOLTAGE));
        assertThat(spec.amount("line.voltage")).contains(new Amount(207, 230, 253));
        assertThat(spec.word("driver.topology")).contains("step-up");
        assertThat(spec.names()).containsExactly("driver.topology", "line.voltage");
        assertThat(spec.rows()).containsExactly(TOPOLOGY, VOLTAGE);
        assertThat(spec.row("line.voltage").orElseThrow().note()).isEqualTo("a rule");
    }

    @Test
    void givesNothingForAKnownNameThatIsNotThere() {
        Spec spec = Spec.of(List.of(TOPOLOGY));
        assertThat(spec.amount("line.voltage")).isEmpty();
        assertThat(spec.word("dimmer.edge")).isEmpty();
        assertThat(spec.row("line.frequency")).isEmpty();
    }

    @Test
    void takesACallWithAnUnknownNameForABug() {
        Spec spec = Spec.of(List.of(TOPOLOGY));
        assertThatThrownBy(() -> spec.amount("line.volage")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> spec.amount("driver.topology")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> spec.word("line.voltage")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> spec.row("voltage")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void cannotBeBuiltWrong() {
        assertThatThrownBy(() -> Spec.of(List.of(VOLTAGE, VOLTAGE))).hasMessage("line.voltage is there twice");
        assertThatThrownBy(() -> SpecRow.filledIn("line.voltage", new Word("high"), ""))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Amount(2, 1, 3)).hasMessage("not in rising order: 2.0, 1.0, 3.0");
        assertThatThrownBy(() -> Amount.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Amount.of(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void cannotBeChanged() {
        Spec spec = Spec.of(List.of(TOPOLOGY));
        assertThatThrownBy(() -> spec.names().clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> spec.rows().clear()).isInstanceOf(UnsupportedOperationException.class);
    }
}
