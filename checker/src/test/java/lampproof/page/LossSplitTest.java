package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lampproof.prediction.DeckKind;
import lampproof.prediction.loss.LossPart;
import org.junit.jupiter.api.Test;

class LossSplitTest {

    private static final String RECOVERING = Runs.ONE_LINE
            + "driver.topology,,step-down,,,\ndriver.control,,peak-current,,,\nswitching.frequency,,65,,kHz,\n"
            + "inductor.inductance,,10,,mH,\nstring.voltage,,33,,V,\nstring.current,,210,,mA,\n"
            + "diode.recovery,,soft,,,\n";

    @Test
    void thePartsOfTheDeckAddUpToItsLoss() {
        RunRecord run = Runs.of(Runs.ONE_LINE + Runs.STEP_UP);
        assertThat(total(LossSplit.of(run), 1))
                .isCloseTo(run.predicted(DeckKind.MAINS, "circuit.loss").orElseThrow(), within(1e-3));
        assertThat(total(LossSplit.of(run), 0))
                .isCloseTo(run.predicted("loss.total").orElseThrow(), within(1e-3));
    }

    /** A diode that recovers in the deck loses more there than by conduction. */
    @Test
    void theReverseLossOfTheDiodeIsIncluded() {
        RunRecord run = Runs.of(RECOVERING);
        double conduction =
                run.predicted(DeckKind.MAINS, "diode.loss.conduction").orElseThrow();
        double reverse = run.predicted(DeckKind.MAINS, "diode.loss.reverse").orElseThrow();
        assertThat(reverse).isPositive();
        LossTable table = LossSplit.of(run);
        assertThat(watts(row(table, LossPart.DIODE).values().get(1), table))
                .isCloseTo(conduction + reverse, within(2e-4));
    }

    @Test
    void aPartHasItsLetterInEveryChart() {
        LossTable up = LossSplit.of(Runs.of(Runs.ONE_LINE + Runs.STEP_UP));
        LossTable down = LossSplit.of(Runs.of(Runs.ONE_LINE + Runs.STEP_DOWN));
        assertThat(letters(up)).containsAllEntriesOf(letters(down));
        for (LossTable table : List.of(up, down)) {
            assertThat(table.bars())
                    .hasSize(3)
                    .allSatisfy(bar -> assertThat(bar.segments())
                            .extracting(LossBar.Segment::letter)
                            .containsExactlyElementsOf(table.rows().stream()
                                    .map(LossTable.Row::letter)
                                    .toList()));
        }
    }

    private static Map<String, String> letters(LossTable table) {
        return table.rows().stream().collect(Collectors.toMap(LossTable.Row::name, LossTable.Row::letter));
    }

    private static LossTable.Row row(LossTable table, LossPart part) {
        return table.rows().stream()
                .filter(row -> row.letter().equals(LossBar.letter(part)))
                .findFirst()
                .orElseThrow();
    }

    private static double total(LossTable table, int column) {
        return watts(table.totals().get(column), table);
    }

    private static double watts(String text, LossTable table) {
        double number = Double.parseDouble(text.replaceAll("[\\u2007\\u2008]", ""));
        return table.unit().equals("mW") ? 1e-3 * number : number;
    }
}
