package lampproof.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Map;
import lampproof.fault.UserFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityReaderTest {

    /** Powers of ten of the SI prefixes (BIPM, The International System of Units, 9th edition, 2019, table 7). */
    private static final Map<Character, Integer> PREFIXES =
            Map.of('f', -15, 'p', -12, 'n', -9, 'u', -6, 'm', -3, 'k', 3, 'M', 6, 'G', 9);

    @ParameterizedTest
    @CsvSource({
        "CAPACITANCE, 2.2, \u00b5F, 2.2e-6",
        "CAPACITANCE, 2.2, \u03bcF, 2.2e-6",
        "CAPACITANCE, 2.2, uF, 2.2e-6",
        "CAPACITANCE, .1, uF, 1e-7",
        "RESISTANCE, 22, k, 2.2e4",
        "RESISTANCE, 4.7, kOhm, 4700",
        "RESISTANCE, 4.7, kohm, 4700",
        "RESISTANCE, 4.7, k\u03a9, 4700",
        "RESISTANCE, 4.7, k\u2126, 4700",
        "RESISTANCE, 1, MOhm, 1e6",
        "RESISTANCE, 1, mOhm, 1e-3",
        "INDUCTANCE, 470, \u00b5, 470e-6",
        "INDUCTANCE, 470, \u03bc, 470e-6",
        "TEMPERATURE, -40, degC, -40",
        "TEMPERATURE, \u221240, \u00b0C, -40",
        "TEMPERATURE, 25, \u2103, 25",
        "TEMPERATURE_DIFFERENCE, 60, \u212a, 60",
        "THERMAL_RESISTANCE, 15, \u00b0C/W, 15",
        "VOLT_PER_KELVIN, -2.2, mV/K, -2.2e-3",
        "RATIO, 7, %, 0.07",
        "ANGLE, 90, \u00b0, 90",
        "DURATION, 50, kh, 50000",
        "SLOPE, 25, mA/us, 25e3",
        "SLOPE, 0.5, A/\u00b5s, 0.5e6",
        "FREQUENCY, 1.5e2, kHz, 150e3",
        "CURRENT, 1E-1, mA, 1e-4",
        "NUMBER, 0.5, '', 0.5",
    })
    void readsAUnitInEverySpelling(Dimension dimension, String number, String unit, double value) {
        assertThat(QuantityReader.read(dimension, number, unit, "", "")).isEqualTo(value);
    }

    @Test
    void movesTheExponentInsteadOfMultiplying() {
        assertThat(100 * 1e-6).isNotEqualTo(1e-4);
        assertThat(QuantityReader.read(Dimension.INDUCTANCE, "100", "uH", "", ""))
                .isEqualTo(1e-4);
    }

    @ParameterizedTest
    @EnumSource
    void readsEveryPrefixThatADimensionHas(Dimension dimension) {
        String unit = dimension.unit();
        dimension.spellings().stream()
                .filter(spelling ->
                        spelling.length() == unit.length() + 1 && spelling.endsWith(unit) && !unit.isEmpty())
                .forEach(spelling -> assertThat(QuantityReader.read(dimension, "1", spelling, "", ""))
                        .isEqualTo(Double.parseDouble("1e" + PREFIXES.get(spelling.charAt(0)))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "Infinity",
                "0x1p3",
                "1d",
                "1e",
                "1e5.5",
                "1.5.2",
                "--5",
                "+-5",
                "",
                " ",
                ".",
                "1e9999",
                "1/2",
                "10\u00b2",
                "\u00bd",
                "\uff11\uff10",
                "\u0661",
                "5 V",
                "~5",
                "<5",
                "5?",
                "1 e3",
                "1e 3"
            })
    void refusesWhatIsNoPlainNumber(String number) {
        assertThat(faults(Dimension.VOLTAGE, number, "V")).startsWith("typ: invalid number");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"kelvin", "Vrms", "V\u00b2", "V V", "k V", "VV", "v", "1V", "V/", "dBV", "\u00b5", "cV", "%V"})
    void refusesWhatIsNoUnit(String unit) {
        assertThat(faults(Dimension.VOLTAGE, "5", unit)).startsWith("typ: unknown unit, found '" + unit + "'");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4k7 | typ: a prefix inside a number, found '4k7'; write 4.7 kOhm: the number 4.7 with the unit kOhm",
                "4R7 | typ: a prefix inside a number, found '4R7'; write 4.7 Ohm: the number 4.7 with the unit Ohm",
                "1 000 | typ: a thousands separator in a number, found '1 000'; write the digits without it",
                "1'000.5 | typ: a thousands separator in a number, found '1'000.5'; write the digits without it",
                "1,000 | typ: a thousands separator in a number, found '1,000'; write the digits without it",
                "1,5 | typ: a comma in a number, found '1,5'; write a decimal point",
                "90..264 | typ: a range in one cell, found '90..264'; put its ends into min and max",
                "90 Ohm - 264 Ohm | typ: a range in one cell, found '90 Ohm - 264 Ohm'; put its ends into min and max",
                "5 +/- 1 | typ: a range in one cell, found '5 +/- 1'; put its ends into min and max",
                "high | typ: invalid number, found 'high', allowed: digits, one decimal point, an exponent",
                "1e999 | typ: the number is too large or too small, found '1e999'",
                "1e-400 | typ: the number is too large or too small, found '1e-400'",
            })
    void saysWhatIsWrongWithANumber(String number, String message) {
        assertThat(faults(Dimension.RESISTANCE, number, "kOhm")).isEqualTo(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "KOhm | typ: unknown unit, found 'KOhm', allowed: mOhm, Ohm, kOhm, MOhm; did you mean kOhm?",
                "MegOhm | typ: unknown unit, found 'MegOhm', allowed: mOhm, Ohm, kOhm, MOhm; did you mean MOhm?",
                "Ohms | typ: unknown unit, found 'Ohms', allowed: mOhm, Ohm, kOhm, MOhm; did you mean Ohm?",
                "M | typ: unknown unit, found 'M', allowed: mOhm, Ohm, kOhm, MOhm",
                "uF | typ: a unit of capacitance instead of a unit of resistance, found 'uF', "
                        + "allowed: mOhm, Ohm, kOhm, MOhm",
                "'' | typ: the unit of this resistance is missing, allowed: mOhm, Ohm, kOhm, MOhm",
            })
    void saysWhatIsWrongWithAUnit(String unit, String message) {
        assertThat(faults(Dimension.RESISTANCE, "1", unit)).isEqualTo(message);
    }

    @Test
    void refusesAUnitOfAPlainNumber() {
        assertThat(faults(Dimension.NUMBER, "1", "%"))
                .isEqualTo("typ: a unit after a plain number, found '%', allowed: an empty cell");
    }

    @Test
    void keepsNoSignOfZero() {
        assertThat(QuantityReader.read(Dimension.VOLTAGE, "-0", "V", "", "")).isEqualTo(0.0);
    }

    private static String faults(Dimension dimension, String number, String unit) {
        UserFault fault =
                catchThrowableOfType(UserFault.class, () -> QuantityReader.read(dimension, number, unit, "typ", "typ"));
        return fault.findings().get(0).text();
    }
}
