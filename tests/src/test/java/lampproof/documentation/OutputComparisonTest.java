package lampproof.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutputComparisonTest {

    @ParameterizedTest
    @CsvSource({
        "line.power 7.331 W agrees,   line.power   7.400 W   agrees, true",
        "line.power 7.331 W agrees,   line.power   7.900 W   agrees, false",
        "line.power 7.331 W agrees,   line.power   7.331 W   differs, false",
        "line.power 7.331 W agrees,   line.power   7.331 mW  agrees, false",
        "loss +0.06 %, loss -0.04 %, false",
        "loss +0.06 %, loss +0.01 %, true",
        "loss 100 mW, loss 106 mW, false",
        "harmonic.3 5.95 %, harmonic.5 5.95 %, false"
    })
    void numbersMayDifferALittleAndWordsMayNot(String sample, String output, boolean same) {
        assertThat(OutputComparison.same(List.of(sample), List.of(output))).isEqualTo(same);
    }

    @ParameterizedTest
    @CsvSource({"1, 2", "2, 1"})
    void aLineMoreOrLessIsADifference(int sample, int output) {
        List<String> lines = List.of("deck mains", "deck crest");
        assertThat(OutputComparison.same(lines.subList(0, sample), lines.subList(0, output)))
                .isFalse();
    }
}
