package lampproof.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The command line reaches every class; {@code unreached.txt} lists those that wait for a use. */
class ReachTest {

    /** The length of the list. It may only shrink, so lower this with it. */
    private static final int WAITING = 54;

    private static final String ENTRY = "lampproof.cli.Main";

    private final List<String> waiting;

    ReachTest() throws IOException {
        try (InputStream list = ReachTest.class.getResourceAsStream("unreached.txt")) {
            waiting = new String(list.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        }
    }

    @Test
    void everyOtherClassIsReached() {
        Set<String> unreached = unreached();
        unreached.removeAll(names());
        assertThat(unreached).as("classes that the command line does not reach").isEmpty();
    }

    @Test
    void everyListedClassExistsAndIsUnreached() {
        Set<String> done = names();
        done.removeAll(unreached());
        assertThat(done).as("lines to delete from unreached.txt").isEmpty();
    }

    @Test
    void theListOnlyShrinks() {
        assertThat(waiting).hasSize(WAITING).allMatch(line -> line.matches("(hand|template): [a-z.]+\\.[A-Z]\\w+: .+"));
        assertThat(names()).hasSize(WAITING);
    }

    private Set<String> names() {
        return waiting.stream()
                .map(line -> "lampproof." + line.split(": ", -1)[1])
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> unreached() {
        Set<String> names = new TreeSet<>(Program.names());
        names.removeAll(Program.reachedFrom(ENTRY));
        return names;
    }
}
