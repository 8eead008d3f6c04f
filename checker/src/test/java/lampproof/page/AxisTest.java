package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class AxisTest {

    @Test
    void aLogarithmicAxisHasTicksAtOneTwoAndFive() {
        Axis axis = Axis.logarithmic(50e3, 1e6, 0, 130.103);
        assertThat(axis.logarithmicTicks(1e3))
                .extracting(Axis.Tick::label)
                .containsExactly("50", "100", "200", "500", "1000");
        assertThat(axis.logarithmicTicks(1e3)).extracting(Axis.Tick::at).containsExactly(0.0, 30.1, 60.2, 100.0, 130.1);
        assertThat(axis.at(Math.log10(100e3))).isCloseTo(30.103, within(1e-3));
    }

    @Test
    void aPlotMayStartAboveZero() {
        PlotView plot = new Plot("p", "a value", "V", 250)
                .from(90)
                .add(new Layer.Curve("predicted", "", new double[] {0, 1}, new double[] {95, 96}))
                .view(Plot.across(0, 1), new PlotView.Scale("x", "V", List.of()), "all of it");
        assertThat(plot.y().ticks().get(0).label()).isEqualTo("90");
        assertThat(plot.y().ticks().get(0).at()).isEqualTo(plot.frame().bottom());
    }
}
