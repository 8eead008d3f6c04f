package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lampproof.rule.RatedUse;
import lampproof.rule.RatedUses;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BillRowsTest {

    private final RunRecord run = Runs.of(Runs.LINE_RANGE + Runs.STEP_UP);

    @ParameterizedTest
    @ValueSource(strings = {"", "dimmer.edge,,leading,,,\n", "dimmer.edge,,trailing,,,\n"})
    void everyItemIsAPartThatThePageKnows(String dimmer) {
        for (String lamp : List.of(Runs.STEP_UP, Runs.STEP_DOWN)) {
            BillRows bill = BillRows.of(Runs.of(Runs.ONE_LINE + lamp + dimmer));
            assertThat(bill.missing()).isEmpty();
            assertThat(bill.items()).hasSizeGreaterThanOrEqualTo(13);
            assertThat(bill.items().stream()
                            .mapToInt(item -> item.size().count())
                            .sum())
                    .isEqualTo(bill.total().count());
        }
    }

    @Test
    void aPartHasValueRatingAndMargin() {
        RatedUse use = RatedUses.of(run.corners()).stream()
                .filter(one -> one.name().equals("bus.voltage_rating"))
                .findFirst()
                .orElseThrow();
        BillRows.Row bus = row("bus capacitor");
        assertThat(bus.value()).isEqualTo("47 nF");
        assertThat(bus.rating()).isEqualTo("630 V");
        assertThat(bus.margin()).isEqualTo(Long.toString(Math.round(100 * (use.rated() / use.used() - 1))));
        assertThat(row("fuse").margin()).isEmpty();
    }

    @Test
    void aPageHasTheSignsOfUnitsAndASpreadsheetPlainText() {
        BillRows bill = BillRows.of(run);
        assertThat(bill.csv()).contains("fuse,15 Ohm,").isASCII();
        assertThat(bill.signed().items().get(0).value()).isEqualTo("15\u00a0\u03a9");
        assertThat(bill.signed().items()).extracting(BillRows.Row::rating).contains("600\u00a0V, 200\u00a0mA");
    }

    @Test
    void theTableForASpreadsheetHasOneLineAPart() {
        BillRows bill = BillRows.of(run);
        List<String> lines = bill.csv().lines().toList();
        assertThat(lines).hasSize(1 + bill.items().size());
        assertThat(lines.get(0)).isEqualTo("part,value,rating,package,count,area_mm2,cost_points,margin_percent");
        assertThat(lines).anySatisfy(line -> assertThat(line).startsWith("bus capacitor,47 nF,630 V,film box"));
    }

    /** 100 uF at 630 V store 20 J; the largest film capacitor of the table takes 0.4 J. */
    @Test
    void capacitorsWithoutRoomAreSaidInWords() {
        BillRows bill = BillRows.of(Runs.of(Runs.ONE_LINE + Runs.STEP_UP + "output.capacitance,,100,,uF,\n"));
        assertThat(bill.items()).isEmpty();
        assertThat(bill.missing()).contains("capacitors than a lamp has room for");
        assertThat(bill.csv().lines()).hasSize(1);
    }

    private BillRows.Row row(String part) {
        return BillRows.of(run).items().stream()
                .filter(item -> item.part().equals(part))
                .findFirst()
                .orElseThrow();
    }
}
