package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lampproof.prediction.DeckKind;
import org.junit.jupiter.api.Test;

class HeadlineRowsTest {

    private final RunRecord run = Runs.of(Runs.LINE_RANGE + Runs.STEP_UP);
    private final List<Fact> facts = HeadlineRows.of(run.corners());

    /** A reader who divides the two powers finds the efficiency. */
    @Test
    void thePowersGiveTheEfficiency() {
        double ratio = number("String power") / number("Line power");
        assertThat(number("Efficiency of the whole lamp")).isCloseTo(100 * ratio, within(0.2));
        assertThat(number("Efficiency of the whole lamp"))
                .isCloseTo(run.predicted("efficiency").orElseThrow(), within(0.06));
    }

    @Test
    void theValuesAreThoseOfTheFigures() {
        assertThat(number("Power factor")).isCloseTo(mains("line.power_factor"), within(6e-4));
        assertThat(number("THD of the line current")).isCloseTo(mains("line.current.thd"), within(0.06));
        assertThat(number("Flicker, percent")).isCloseTo(mains("string.flicker.percent"), within(0.06));
        assertThat(number("Switch, peak")).isCloseTo(mains("switch.voltage.peak"), within(0.6));
        assertThat(value("Switch, peak")).endsWith(", 92.6\u00a0mA");
        assertThat(mains("switch.current.peak")).isCloseTo(92.6e-3, within(0.05e-3));
    }

    @Test
    void lifeIsInWholeThousandsOfHours() {
        double least = Math.min(
                run.predicted("life.led").orElseThrow(),
                run.predicted("life.capacitor").orElseThrow());
        assertThat(value("Life")).matches("\\d+\u00a0000\u00a0h, .*");
        assertThat(Double.parseDouble(value("Life").split("\u00a0", -1)[0])).isCloseTo(least / 1000, within(0.5));
    }

    @Test
    void theNoiseMarginIsTheLesserOfBothDetectors() {
        double average = run.predicted("noise.margin.average").orElseThrow();
        assertThat(Double.parseDouble(value("Noise margin").split(" ", -1)[0].replace('\u2212', '-')))
                .isLessThanOrEqualTo(average + 0.06);
        assertThat(value("Noise margin")).containsPattern(" dB, (quasi-peak|average)$");
    }

    private double mains(String figure) {
        return run.predicted(DeckKind.MAINS, figure).orElseThrow();
    }

    private double number(String name) {
        return Double.parseDouble(value(name).split("[\u00a0 ]", -1)[0]);
    }

    private String value(String name) {
        return facts.stream()
                .filter(fact -> fact.name().equals(name))
                .map(Fact::value)
                .findFirst()
                .orElseThrow();
    }
}
