package lampproof.spec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import lampproof.unit.Dimension;
import org.junit.jupiter.api.Test;

class VocabularyTest {

    @Test
    void requiresConverterLineAndString() {
        assertThat(Vocabulary.required())
                .containsExactly(
                        "driver.topology", "line.voltage", "line.frequency", "string.voltage", "string.current");
        assertThat(Vocabulary.names()).containsAll(Vocabulary.required());
    }

    @Test
    void hasTheGroupsOfTheCircuit() {
        assertThat(Vocabulary.groups())
                .containsExactlyInAnyOrder(
                        "line",
                        "dimmer",
                        "filter",
                        "bridge",
                        "bus",
                        "driver",
                        "switching",
                        "inductor",
                        "switch",
                        "diode",
                        "sense",
                        "output",
                        "surge",
                        "derating",
                        "bleeder",
                        "bias",
                        "string",
                        "ambient",
                        "thermal",
                        "life",
                        "decks",
                        "tolerance");
    }

    @Test
    void hasARangeForEveryQuantityAndAMeaningForEveryName() {
        for (Entry entry : Vocabulary.entries()) {
            assertThat(entry.meaning()).isNotBlank();
            assertThat(entry.name()).matches("[a-z]+\\.[a-z_]+");
            if (entry instanceof Quantity quantity) {
                assertThat(quantity.least()).isLessThan(quantity.most());
            }
        }
    }

    @Test
    void saysWhatIsAllowed() {
        assertThat(Vocabulary.quantity("string.current").allowed()).isEqualTo("1 mA to 3 A");
        assertThat(Vocabulary.quantity("inductor.turns").allowed()).isEqualTo("1 to 5000");
        assertThat(Vocabulary.choice("driver.topology").allowed()).isEqualTo("step-down, step-up");
        assertThat(Vocabulary.choice("inductor.core").allowed()).isEqualTo("a part name in ASCII");
    }

    @Test
    void knowsATolerancePerFigure() {
        Quantity tolerance = Vocabulary.quantity("tolerance.switch.current.peak");
        assertThat(tolerance.dimension()).isEqualTo(Dimension.RATIO);
        assertThat(tolerance.meaning()).isEqualTo("tolerance of simulated against predicted switch.current.peak");
        assertThat(Vocabulary.find("tolerance.")).isEmpty();
        assertThat(Vocabulary.find("tolerance.=cmd")).isEmpty();
    }

    @Test
    void takesACallWithAnUnknownNameForABug() {
        assertThatThrownBy(() -> Vocabulary.quantity("line.volage"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the vocabulary has no line.volage of this kind");
        assertThatThrownBy(() -> Vocabulary.choice("line.voltage")).isInstanceOf(IllegalArgumentException.class);
    }
}
