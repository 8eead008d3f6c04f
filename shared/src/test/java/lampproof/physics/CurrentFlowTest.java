package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CurrentFlowTest {

    @Test
    void a_sine_flows_from_five_per_cent_to_five_per_cent_with_its_peak_at_the_crest() {
        CurrentFlow flow = CurrentFlow.ofSamples(IntStream.rangeClosed(0, 1800)
                .mapToDouble(i -> Math.sin(i * Math.PI / 1800))
                .toArray());
        assertThat(Math.toDegrees(flow.start())).isCloseTo(Math.toDegrees(Math.asin(0.05)), within(0.1));
        assertThat(Math.toDegrees(flow.lastPeak())).isCloseTo(90, within(1e-9));
        assertThat(Math.toDegrees(flow.end())).isCloseTo(180 - Math.toDegrees(Math.asin(0.05)), within(0.1));
    }

    @Test
    void the_last_of_several_peaks_counts_and_a_plateau_ends_at_its_end() {
        CurrentFlow peaks = CurrentFlow.ofSamples(0, 2, 10, 3, 5, 1, 0);
        assertThat(Math.toDegrees(peaks.lastPeak())).isCloseTo(120, within(1e-9));
        CurrentFlow plateau = CurrentFlow.ofSamples(0, 1, 1, 1, 1, 0, 0);
        assertThat(Math.toDegrees(plateau.start())).isCloseTo(30, within(1e-9));
        assertThat(Math.toDegrees(plateau.lastPeak())).isCloseTo(120, within(1e-9));
        assertThat(Math.toDegrees(plateau.end())).isCloseTo(120, within(1e-9));
    }

    @Test
    void a_half_cycle_without_current_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurrentFlow.ofSamples(0, 0, 0))
                .withMessage("peak of the current [A] must be above 0 and finite, found 0.0");
    }
}
