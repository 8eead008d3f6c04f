package lampproof.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityWriterTest {

    @ParameterizedTest
    @CsvSource({
        "INDUCTANCE, 0.00047, 470 uH",
        "INDUCTANCE, 1e-4, 100 uH",
        "VOLTAGE, 230, 230 V",
        "VOLTAGE, 0, 0 V",
        "CURRENT, 0.0167, 16.7 mA",
        "RATIO, 0.07, 7 %",
        "TEMPERATURE, -40, -40 degC",
        "VOLT_PER_KELVIN, -0.0022, -2.2 mV/K",
        "SLOPE, 25000, 25 kA/s",
        "CAPACITANCE, 1e-18, 0.001 fF",
        "NUMBER, 0.5, 0.5",
        "RESISTANCE, 1e30, 1E+24 MOhm",
    })
    void choosesAPrefixThatReadsWell(Dimension dimension, double value, String text) {
        assertThat(QuantityWriter.text(dimension, value)).isEqualTo(text);
    }

    @ParameterizedTest
    @EnumSource
    void writesWhatTheReaderGivesBackBitForBit(Dimension dimension) {
        Random random = new Random(1);
        for (int run = 0; run < 2_000; run++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
            String unit = QuantityWriter.unit(dimension, value);
            String number = QuantityWriter.number(dimension, value, unit);
            assertThat(QuantityReader.read(dimension, number, unit, "", "")).isEqualTo(value);
        }
    }

    @Test
    void writesTheLeastAndTheGreatestNumber() {
        for (double value : new double[] {Double.MIN_VALUE, Double.MIN_NORMAL, Double.MAX_VALUE}) {
            String number = QuantityWriter.number(Dimension.NUMBER, value, "");
            assertThat(QuantityReader.read(Dimension.NUMBER, number, "", "", ""))
                    .isEqualTo(value);
        }
    }
}
