package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lampproof.waveform.BlockSink;
import lampproof.waveform.BlockWriter;
import lampproof.waveform.ReadResult;
import lampproof.waveform.Span;
import lampproof.waveform.Waveforms;
import org.junit.jupiter.api.Test;

class DecimatorTest {

    private final MeasurementPass pass = new MeasurementPass();
    private final Channel channel = pass.channel("v");

    /** Points 0 and 2 are left of 0, 1, 0: the triangle of area 1 is gone. */
    @Test
    void everySecondPointIsLeftOut() {
        assertThat(sparseMean(new double[][] {{0, 0}, {1, 1}, {2, 0}})).isZero();
    }

    /** By hand: 0, 3 and 4 s are left, so the area is 0 + (0 + 4) / 2. */
    @Test
    void theLastPointStays() {
        assertThat(sparseMean(new double[][] {{0, 0}, {1, 7}, {3, 0}, {4, 4}})).isCloseTo(0.5, within(1e-12));
    }

    /** A square wave is told by its edges alone, whichever of their points is a second one. */
    @Test
    void bothSidesOfAnEdgeStay() {
        assertThat(sparseMean(new double[][] {{0, 0}, {1, 0}, {1, 3}, {2, 3}, {2, 0}, {3, 0}}))
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void bothSidesOfAnEdgeStayWhateverStandsBeforeIt() {
        assertThat(sparseMean(new double[][] {{0, 0}, {0.5, 0}, {1, 0}, {1, 3}, {2, 3}, {2, 0}, {3, 0}}))
                .isCloseTo(1, within(1e-12));
    }

    private double sparseMean(double[][] points) {
        Window window = Window.of(points[0][0], points[points.length - 1][0]);
        Measurement sparse = pass.addSparse(new Mean(window, channel));
        pass.over(table(points));
        return sparse.result().value();
    }

    private static Waveforms table(double[][] points) {
        Span span = new Span(points[0][0], points[points.length - 1][0]);
        return new Waveforms() {
            @Override
            public Span span() {
                return span;
            }

            @Override
            public ReadResult rows(List<String> names, BlockSink sink) {
                BlockWriter writer = new BlockWriter(names.size(), sink);
                for (double[] point : points) {
                    writer.row(point[0], new double[] {point[1]});
                }
                writer.end();
                return new ReadResult("points", points.length, span, List.of());
            }
        };
    }
}
