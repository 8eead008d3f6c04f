package lampproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import lampproof.prediction.PredictedDesign;
import lampproof.spec.SpecReader;
import org.junit.jupiter.api.Test;

class PredictionTextTest {

    private static final PredictedDesign PREDICTED = PredictedDesign.of(SpecReader.read(new StringReader("""
            quantity,min,typ,max,unit,note
            driver.topology,,step-up,,,
            line.voltage,207,230,253,V,
            line.frequency,,50,,Hz,
            string.voltage,,420,,V,
            string.current,,16.7,,mA,
            """), "spec"));

    private static final String TEXT = new PredictionText(Style.PLAIN).text(PREDICTED.predictions());

    @Test
    void the_parts_come_largest_first_and_the_total_last() {
        List<String> lines = losses();
        assertThat(lines).hasSize(12).last().asString().contains("loss.total").contains("100.0 %");
        assertThat(lines.subList(0, 11)).isSortedAccordingTo((a, b) -> Double.compare(share(b), share(a)));
    }

    @Test
    void the_shares_of_the_parts_add_up_to_the_whole() {
        List<String> lines = losses();
        double sum = lines.subList(0, 11).stream()
                .mapToDouble(PredictionTextTest::share)
                .sum();
        assertThat(sum).isBetween(99.5, 100.5);
    }

    @Test
    void the_values_at_the_other_line_voltages_stand_beside_the_last_row_of_a_figure() {
        String figures = TEXT.substring(TEXT.indexOf("\nfigures"));
        assertThat(figures).containsPattern("figure +predicted +tolerance +deck +low-line +high-line");
        assertThat(figures.lines().filter(line -> line.contains("bus.voltage.peak ")))
                .singleElement()
                .asString()
                .containsPattern("323.6 V .* mains +29[0-9.]+ V +35[0-9.]+ V");
        assertThat(figures.lines().filter(line -> line.startsWith("  efficiency ")))
                .hasSize(1);
    }

    private static List<String> losses() {
        return TEXT.substring(0, TEXT.indexOf("\nfigures"))
                .lines()
                .skip(1)
                .filter(line -> !line.isBlank())
                .toList();
    }

    private static double share(String line) {
        String share = line.substring(0, line.indexOf('%')).strip();
        return Double.parseDouble(share.substring(share.lastIndexOf(' ') + 1).toLowerCase(Locale.ROOT));
    }
}
