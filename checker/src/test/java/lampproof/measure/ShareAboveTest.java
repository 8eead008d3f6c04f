package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class ShareAboveTest {

    /** A ripple that goes below the level in every one of its cycles takes nothing off the time in which a current flows. */
    @Test
    void aCurrentFlowsWhereItsMeanDoes() {
        DoubleUnaryOperator current = t -> t < 6e-3 ? 1 + 1.5 * Math.sin(2 * Math.PI * 50e3 * t) : 0;
        MeasurementPass pass = new MeasurementPass();
        ShareAbove share = pass.add(new ShareAbove(Window.of(0, 10e-3), pass.channel("i"), 0.01, 0.1e-3));
        Wave.run(pass, 0, 10e-3, 100_000, List.of(current));
        assertThat(share.result().value()).isCloseTo(0.6, within(1e-9));
    }

    @Test
    void aWindowShorterThanOnePartHasNoShare() {
        MeasurementPass pass = new MeasurementPass();
        ShareAbove share = pass.add(new ShareAbove(Window.of(0, 10e-3), pass.channel("i"), 0.01, 20e-3));
        Wave.run(pass, 0, 10e-3, 100, List.of(t -> 1.0));
        assertThat(share.result().present()).isFalse();
        assertThat(share.result().note()).isEqualTo("the window is shorter than one part");
    }
}
