package lampproof.lamps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.stream.LongStream;
import lampproof.fault.UserFault;
import lampproof.prediction.DeckKind;
import lampproof.simulator.Simulator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A slice of the long run: {@code tests/long} tries as many lamps as are asked for. */
class RandomLampsTest {

    private static final int LAMPS = 12;

    /** The clock of this lamp strikes for the first time while its gate falls. */
    private static final long STRUCK = 60;

    /** The lamps whose whole line cycle is simulated as well: both converters, three laws. */
    private static final Set<Long> MAINS = Set.of(2L, 5L, 10L, STRUCK);

    private static final double AGREEING_AT_LEAST = 0.97;

    @TempDir
    private Path folder;

    @Test
    void decksOfRandomLampsEndAndAgree() throws InterruptedException, ExecutionException {
        LampBench bench = new LampBench(simulatorOrSkip(), Runtime.getRuntime().availableProcessors(), folder);
        Series series = new Series();
        bench.run(
                LongStream.concat(LongStream.rangeClosed(1, LAMPS), LongStream.of(STRUCK))
                        .mapToObj(RandomLampsTest::order)
                        .toList(),
                series::add);
        assertThat(series.trusted()).as(series::text).isEqualTo(series.decks());
        assertThat(series.share()).as(series::text).isGreaterThanOrEqualTo(AGREEING_AT_LEAST);
    }

    @Test
    void aSeedStandsForOneLamp() {
        assertThat(LampGenerator.of(7)).isEqualTo(LampGenerator.of(7));
        assertThat(LampGenerator.of(7).table()).isNotEqualTo(LampGenerator.of(8).table());
    }

    private static LampBench.Order order(long seed) {
        return new LampBench.Order(
                LampGenerator.of(seed), MAINS.contains(seed) ? DeckKind.STANDARD : Set.of(DeckKind.CREST));
    }

    private static Simulator simulatorOrSkip() {
        try {
            return Simulator.locate(System.getenv());
        } catch (UserFault fault) {
            return abort("skipped: " + fault.getMessage());
        }
    }
}
