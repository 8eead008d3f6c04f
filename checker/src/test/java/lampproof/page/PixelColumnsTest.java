package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PixelColumnsTest {

    @Test
    void aPeakOfOneSampleIsKept() {
        PixelColumns columns = new PixelColumns(0, 1, 10, 1);
        for (int i = 0; i <= 1000; i++) {
            columns.row(i / 1000.0, new double[] {i == 456 ? 7 : 0});
        }
        Trace trace = columns.trace(0);
        assertThat(trace.high()[4]).isEqualTo(7);
        assertThat(trace.greatest()).isEqualTo(7);
        assertThat(trace.high()[5]).isZero();
    }

    @Test
    void aLongPieceRunsStraightThroughTheColumnsThatItCrosses() {
        PixelColumns columns = new PixelColumns(0, 4, 4, 1);
        columns.row(0, new double[] {0});
        columns.row(4, new double[] {8});
        Trace trace = columns.trace(0);
        assertThat(trace.low()).containsExactly(new double[] {0, 2, 4, 6}, within(1e-12));
        assertThat(trace.high()).containsExactly(new double[] {2, 4, 6, 8}, within(1e-12));
    }

    @Test
    void bothSidesOfAnEdgeWithoutWidthAreKept() {
        PixelColumns columns = new PixelColumns(0, 2, 2, 1);
        columns.row(0, new double[] {1});
        columns.row(1.5, new double[] {1});
        columns.row(1.5, new double[] {-3});
        columns.row(2, new double[] {-3});
        assertThat(columns.trace(0).low()).containsExactly(1, -3);
        assertThat(columns.trace(0).high()).containsExactly(1, 1);
    }

    @Test
    void whatLiesOutsideThePictureDoesNotShow() {
        PixelColumns columns = new PixelColumns(10, 20, 5, 1);
        columns.row(0, new double[] {100});
        columns.row(9, new double[] {1});
        columns.row(21, new double[] {1});
        columns.row(30, new double[] {100});
        assertThat(columns.trace(0).greatest()).isEqualTo(1);
    }

    @Test
    void columnsBeforeTheFirstRowStayEmpty() {
        PixelColumns columns = new PixelColumns(0, 4, 4, 1);
        columns.row(2, new double[] {1});
        columns.row(4, new double[] {1});
        assertThat(columns.trace(0).holds(0)).isFalse();
        assertThat(columns.trace(0).holds(1)).isFalse();
        assertThat(columns.trace(0).holds(3)).isTrue();
    }

    /** The other algorithm: every piece is looked at in steps a thousand times finer than a column. */
    @Test
    void everyColumnAgreesWithASearchInFineSteps() {
        Random random = new Random(7);
        double[] times = new double[400];
        double[] values = new double[times.length];
        for (int i = 1; i < times.length; i++) {
            times[i] = times[i - 1] + 0.02 * random.nextDouble();
            values[i] = random.nextGaussian();
        }
        double end = times[times.length - 1];
        PixelColumns columns = new PixelColumns(0, end, 37, 1);
        for (int i = 0; i < times.length; i++) {
            columns.row(times[i], new double[] {values[i]});
        }
        Trace trace = columns.trace(0);
        for (int column = 0; column < 37; column++) {
            double most = Double.NEGATIVE_INFINITY;
            for (int k = 0; k <= 1000; k++) {
                most = Math.max(most, at(end * (column + k / 1000.0) / 37, times, values));
            }
            assertThat(trace.high()[column]).isBetween(most - 1e-9, most + 0.2);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 2})
    void thePhaseOfASineIsFound(double periods) {
        PixelColumns columns = new PixelColumns(0, 1, 680, 1);
        double turn = 2 * Math.PI * periods;
        for (int i = 0; i <= 5000; i++) {
            columns.row(i / 5000.0, new double[] {325 * Math.sin(turn * i / 5000.0 + 0.7)});
        }
        assertThat(columns.trace(0).phase(turn)).isCloseTo(0.7, within(1e-3));
    }

    private static double at(double time, double[] times, double[] values) {
        int i = 1;
        while (i < times.length - 1 && times[i] < time) {
            i++;
        }
        double share = (time - times[i - 1]) / (times[i] - times[i - 1]);
        return values[i - 1] + share * (values[i] - values[i - 1]);
    }
}
