package lampproof.lint.netlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpiceNumberTest {

    @ParameterizedTest
    @CsvSource({
        // read back from ngspice 39.3 as resistances
        "1M, 1e-3",
        "1Mohm, 1e-3",
        "1MEGohm, 1e6",
        "10F, 1e-14",
        "10mil, 2.54e-4",
        "4k7, 4e3",
        "470\u00b5, 470e-6",
        "470\u03bc, 470",
        "1e3k, 1e6",
        "1T, 1e12",
        "1a, 1",
        "1x, 1",
        "1G, 1e9",
        "1e-6F, 1e-21",
        "1d3, 1e3",
        "-5, -5",
        "1mega, 1e6",
        "1.5.2, 1.5",
        ".1uF, 1e-7",
        "2.5kohm, 2500"
    })
    void aNumberHasTheValueThatTheSimulatorReads(String word, double value) {
        assertThat(SpiceNumber.of(word).orElseThrow().value()).isCloseTo(value, within(Math.abs(value) * 1e-12));
    }

    @Test
    void aWordThatDoesNotBeginAsANumberIsNone() {
        assertThat(SpiceNumber.of("nan")).isEmpty();
        assertThat(SpiceNumber.of("")).isEmpty();
        assertThat(SpiceNumber.of(".")).isEmpty();
        assertThat(SpiceNumber.of("{x}")).isEmpty();
    }
}
