package lampproof.lint;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import lampproof.lint.netlist.NetlistReader;
import lampproof.lint.rule.LintFinding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What keeps a stranger's deck from doing harm may not keep an honest one from running. */
class HarmlessDecksTest {

    private static final int DECKS = 200;
    private static final int EVERY = 10;

    @TempDir
    Path folder;

    @Test
    void noneOfTwoHundredHarmlessDecksHasAnError() {
        List<String> errors = LongStream.range(0, DECKS)
                .boxed()
                .flatMap(seed -> Linter.check(NetlistReader.parse(HarmlessDeck.of(seed), seed + ".cir")).stream())
                .filter(LintFinding::isError)
                .map(LintFinding::text)
                .toList();
        assertThat(errors).isEmpty();
    }

    static LongStream someSeeds() {
        return LongStream.range(0, DECKS / EVERY).map(index -> index * EVERY);
    }

    @ParameterizedTest
    @MethodSource("someSeeds")
    void aHarmlessDeckRunsInTheSimulator(long seed) throws Exception {
        String deck = HarmlessDeck.of(seed);
        assertThat(Ngspice.run(folder, deck))
                .as(deck)
                .doesNotContainIgnoringCase("error")
                .doesNotContain("no such command", "no such vector", "aborted");
    }
}
