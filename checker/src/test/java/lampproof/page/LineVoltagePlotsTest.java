package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LineVoltagePlotsTest {

    @Test
    void oneLineVoltageGivesNoPlot() {
        assertThat(LineVoltagePlots.of(Runs.of(Runs.ONE_LINE + Runs.STEP_UP))).isEmpty();
    }

    @Test
    void bothQuantitiesAreDrawnFromTheLeastToTheGreatestLineVoltage() {
        List<PlotView> plots = LineVoltagePlots.of(Runs.of(Runs.LINE_RANGE + Runs.STEP_UP));
        assertThat(plots)
                .extracting(plot -> plot.y().name())
                .containsExactly("Efficiency of the whole lamp", "Power factor");
        assertThat(plots.get(1).layers()).extracting(PlotView.Drawn::legend).containsExactly("predicted", "simulated");
        assertThat(plots.get(0).x().ticks()).extracting(Axis.Tick::label).contains("210", "250");
        assertThat(plots.get(0).layers().get(0).path()).startsWith("M64 ").contains("l113.3 ");
    }
}
