package lampproof.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {

    private static final List<String> KNOWN = List.of("kOhm", "mOhm", "MOhm", "kitten");

    @Test
    void findsTheWordWithTheFewestChanges() {
        // kitten and sitting are three changes apart: the common textbook example, no source
        assertThat(Nearest.to("sittin", KNOWN)).contains("kitten");
        assertThat(Nearest.to("sitting", List.of("kitten"))).isEmpty();
    }

    @Test
    void heedsTheLetterCaseLast() {
        assertThat(Nearest.to("KOHM", KNOWN)).contains("kOhm");
        assertThat(Nearest.to("MOHM", KNOWN)).contains("MOhm");
    }

    @Test
    void offersNothingWhenNothingIsNear() {
        assertThat(Nearest.to("volt", KNOWN)).isEmpty();
        assertThat(Nearest.to("", KNOWN)).isEmpty();
        assertThat(Nearest.to("k".repeat(1_000), KNOWN)).isEmpty();
    }
}
