package lampproof.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestNameTest {

    private static final List<String> KNOWN = List.of("kOhm", "mOhm", "MOhm", "kitten");

    @Test
    void findsTheWordWithTheFewestChanges() {
        // kitten and sitting are three changes apart: the common textbook example, no source
        assertThat(NearestName.to("sittin", KNOWN)).contains("kitten");
        assertThat(NearestName.to("sitting", List.of("kitten"))).isEmpty();
    }

    @Test
    void heedsTheLetterCaseLast() {
        assertThat(NearestName.to("KOHM", KNOWN)).contains("kOhm");
        assertThat(NearestName.to("MOHM", KNOWN)).contains("MOhm");
    }

    @Test
    void offersNothingWhenNothingIsNear() {
        assertThat(NearestName.to("volt", KNOWN)).isEmpty();
        assertThat(NearestName.to("", KNOWN)).isEmpty();
        assertThat(NearestName.to("k".repeat(1_000), KNOWN)).isEmpty();
    }
}
