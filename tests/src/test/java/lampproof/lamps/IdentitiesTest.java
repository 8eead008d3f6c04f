package lampproof.lamps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** A slice of {@code tests/identities}: what physics asks of every accepted spec. */
class IdentitiesTest {

    private static final int SPECS = 150;

    @Test
    void predictionsOfRandomSpecsObeyPhysics() {
        List<Identities> all = LongStream.rangeClosed(1, SPECS)
                .mapToObj(seed -> Identities.of(SpecGenerator.of(seed)))
                .toList();
        assertThat(all.stream().filter(Identities::accepted).count()).isGreaterThan(SPECS / 3);
        assertThat(all).filteredOn(one -> !one.violations().isEmpty()).isEmpty();
    }
}
