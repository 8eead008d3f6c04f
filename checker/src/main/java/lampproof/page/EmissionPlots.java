package lampproof.page;

import java.util.List;

/**
 * What the lamp emits into the line, with its limits.
 *
 * @param harmonics harmonics of the line current
 * @param noise noise at the mains terminals; none when the converter does not switch at the crest
 */
record EmissionPlots(HarmonicsView harmonics, List<PlotView> noise) {

    static EmissionPlots of(RunRecord run) {
        return new EmissionPlots(new HarmonicsPlot(run).view(), NoisePlot.of(run));
    }
}
