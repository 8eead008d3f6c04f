package lampproof.lint;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing may be accused in a deck that is right, and both clean decks are: they run. */
class CleanDecksTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"clean-step-up", "clean-step-down"})
    void nothingIsFoundInACleanDeck(String name) throws Exception {
        assertThat(Decks.messages(Decks.clean(name + ".cir"))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"clean-step-up", "clean-step-down"})
    void aCleanDeckRunsToItsEnd(String name) throws Exception {
        String output = Ngspice.run(folder, Decks.clean(name + ".cir"));
        assertThat(output)
                .doesNotContainIgnoringCase("error")
                .doesNotContain("singular")
                .doesNotContain("aborted");
        List<String> rows = Files.readAllLines(folder.resolve(name + ".csv"));
        double end = name.equals("clean-step-up") ? 3e-3 : 2e-3;
        assertThat(Double.parseDouble(rows.get(rows.size() - 1).strip().replaceFirst("\\s.*", "")))
                .isEqualTo(end);
    }
}
