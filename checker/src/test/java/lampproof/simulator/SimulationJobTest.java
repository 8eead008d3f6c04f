package lampproof.simulator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SimulationJobTest {

    private static final Path DECK = Path.of("run", "mains.cir").toAbsolutePath();

    @Test
    void tableAndLogAreBesideTheDeckAndBearItsName() {
        SimulationJob job = SimulationJob.of(DECK, 0.02);
        assertThat(job.tableFile()).isEqualTo(DECK.resolveSibling("mains.csv"));
        assertThat(job.logFile()).isEqualTo(DECK.resolveSibling("mains.log"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "../mains", "a/b", "a\\b", ".hidden", "a\nb"})
    void aNameThatLeadsElsewhereIsRefused(String name) {
        assertThatThrownBy(() -> new SimulationJob(DECK, name, "mains.csv", 1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("not a plain file name: '" + name + "'");
        assertThatThrownBy(() -> new SimulationJob(DECK, "mains", name, 1, 1, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void aStopTimeOrLimitThatIsNotPositiveIsRefused(double time) {
        assertThatThrownBy(() -> SimulationJob.of(DECK, time))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("stop time and limits of mains must be positive");
        assertThatThrownBy(() -> SimulationJob.of(DECK, 1).withTimeLimit(time))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
