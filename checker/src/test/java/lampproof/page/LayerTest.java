package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class LayerTest {

    private static final Axis X = Axis.of(0, 10, 10, 0, 100);
    private static final Axis Y = Axis.of(0, 10, 10, 100, 0);

    @Test
    void aBandIsTheOutlineOfItsColumns() {
        Trace trace = new Trace(0, 10, new double[] {1, 2}, new double[] {3, 4});
        assertThat(new Layer.Band("simulated", "", trace).path(X, Y)).isEqualTo("M25 70l50 -10l0 20l-50 10z");
    }

    @Test
    void aGapInTheRecordIsAGapInTheBand() {
        Trace trace = new Trace(0, 10, new double[] {1, Double.NaN, 2, 2}, new double[] {1, Double.NaN, 2, 2});
        assertThat(new Layer.Band("simulated", "", trace).path(X, Y))
                .isEqualTo("M12.5 90l0 0z" + "M62.5 80l25 0l0 0l-25 0z");
    }

    @Test
    void stemsStandOnTheAxis() {
        double[] xs = {1, 3};
        double[] ys = {2, 7};
        assertThat(new Layer.Stems("stem", "", xs, ys).path(X, Y)).isEqualTo("M10 100v-20M30 100v-70");
    }

    @Test
    void aCurveIsCutWhereThePlotEnds() {
        double[] xs = {-10, 10, 20};
        double[] ys = {0, 10, 10};
        assertThat(new Layer.Curve("predicted", "", xs, ys).path(X, Y)).isEqualTo("M0 50l100 -50");
    }

    @Test
    void aValueThatIsNotANumberLiftsThePen() {
        double[] xs = {0, 1, 2, 3, 4};
        double[] ys = {0, 1, Double.NaN, 3, 4};
        assertThat(new Layer.Curve("predicted", "", xs, ys).path(X, Y)).isEqualTo("M0 100l10 -10M30 70l10 -10");
    }

    @Test
    void aPlaceThatIsNotANumberIsRefused() {
        assertThatThrownBy(() -> new SvgPath().move(0, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void ticksAreRoundAndBothEndsMayHaveOne() {
        assertThat(Axis.of(0, 0.02 - 1e-9, 11, 0, 100).ticks(1e-3))
                .extracting(Axis.Tick::label)
                .containsExactly("0", "2", "4", "6", "8", "10", "12", "14", "16", "18", "20");
        assertThat(Axis.of(-0.05, 0.05, 5, 0, 100).ticks(1e-3))
                .extracting(Axis.Tick::label)
                .containsExactly("\u221240", "\u221220", "0", "20", "40");
    }

    @Test
    void pointsOfAColumnStandUnderEachOther() {
        assertThat(ColumnText.about(0.09276, "A").column(java.util.OptionalDouble.of(0.09343)))
                .isEqualTo("93.43\u2007\u2007");
        assertThat(ColumnText.about(433.3, "V").column(java.util.OptionalDouble.of(433.5)))
                .isEqualTo("433.5\u2007\u2007\u2007");
        assertThat(ColumnText.about(0.9859, "1").column(java.util.OptionalDouble.of(-0.5)))
                .isEqualTo("\u22120.5000");
    }
}
