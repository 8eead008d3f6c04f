package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lampproof.waveform.Block;
import lampproof.waveform.BlockWriter;
import org.junit.jupiter.api.Test;

/** A record goes through in blocks; no figure may hang on where one ends. The ramp v = t is known everywhere. */
class BlocksTest {

    private static final int CAPACITY = new Block(1).capacity();
    private static final int STEPS = 3 * CAPACITY + 17;

    private final MeasurementPass pass = new MeasurementPass();
    private final Channel ramp = pass.channel("v");

    @Test
    void aRecordOfSeveralBlocksIsMeasuredWithoutAGap() {
        Window all = Window.of(0, STEPS);
        Mean mean = pass.add(new Mean(all, ramp));
        RootMeanSquare rms = pass.add(new RootMeanSquare(all, ramp));
        Mean reversed = pass.add(new Mean(all, pass.channel("turned", Map.of("v", -2.0), 5)));
        runRamp();
        assertThat(mean.result().value()).isCloseTo(STEPS / 2.0, within(1e-9 * STEPS));
        assertThat(rms.result().value()).isCloseTo(STEPS / Math.sqrt(3), within(1e-9 * STEPS));
        assertThat(reversed.result().value()).isCloseTo(5.0 - STEPS, within(1e-9 * STEPS));
    }

    @Test
    void thePieceBetweenTwoBlocksCounts() {
        double border = CAPACITY - 1;
        Mean mean = pass.add(new Mean(Window.of(border + 0.25, border + 0.75), ramp));
        Peak peak = pass.add(new Peak(Window.of(border - 1, border + 0.5), ramp));
        runRamp();
        assertThat(mean.result().value()).isCloseTo(border + 0.5, within(1e-9 * border));
        assertThat(peak.result().value()).isCloseTo(border + 0.5, within(1e-9 * border));
    }

    @Test
    void aBlockStaysAsItIsUntilTheNextIsHandedOn() {
        List<Double> kept = new ArrayList<>();
        Block[] last = new Block[1];
        BlockWriter writer = new BlockWriter(1, block -> {
            if (last[0] != null) {
                kept.add(last[0].values(0)[CAPACITY - 1]);
            }
            last[0] = block;
        });
        for (int i = 0; i < 3 * CAPACITY; i++) {
            writer.row(i, new double[] {i});
        }
        writer.end();
        assertThat(kept).containsExactly(CAPACITY - 1.0, 2.0 * CAPACITY - 1);
    }

    private void runRamp() {
        Wave.run(pass, 0, STEPS, STEPS, List.of(time -> time));
    }
}
