package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class FigureRowsTest {

    private final RunRecord run = Runs.of(Runs.ONE_LINE + Runs.STEP_UP, 1.01, Map.of());
    private final FigureRows rows = FigureRows.of(run.verdict());

    @Test
    void everyFigureIsInOneList() {
        int settled =
                rows.groups().stream().mapToInt(group -> group.rows().size()).sum();
        assertThat(settled + rows.predicted().size())
                .isEqualTo(run.verdict().verdicts().size());
        assertThat(rows.groups()).extracting(FigureRows.Group::outcome).containsExactly("agrees");
        assertThat(rows.predicted()).extracting(FigureRows.Predicted::name).contains("life.led", "temperature.led");
    }

    @Test
    void aSettledFigureHasItsDeviation() {
        FigureRows.Row power = rows.groups().get(0).rows().stream()
                .filter(row -> row.name().equals("line.power.mean"))
                .findFirst()
                .orElseThrow();
        assertThat(power.deck()).isEqualTo("mains");
        assertThat(power.values().deviation()).isEqualTo("+1.00\u00a0%");
    }

    @Test
    void lifeIsGivenInThousandsOfHours() {
        FigureRows.Predicted life = rows.predicted().stream()
                .filter(row -> row.name().equals("life.led"))
                .findFirst()
                .orElseThrow();
        double hours = run.predicted("life.led").orElseThrow();
        assertThat(life.value().strip().replaceAll("[\\u2007\\u2008]", ""))
                .isEqualTo(Long.toString(Math.round(hours / 1000)));
        assertThat(life.unit()).isEqualTo("thousand\u00a0h");
    }
}
