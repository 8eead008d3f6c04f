package lampproof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import lampproof.physics.ConductedLimit;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Probe;
import lampproof.waveform.file.WaveformFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WaveformsTest {

    private static final double PERIOD = 14e-6;

    @TempDir
    private Path folder;

    @Test
    void theSteadyStateShowsSwitchAndDiodeCurrent() throws Exception {
        WaveformFile mains = Runs.wave(folder.resolve("mains.csv"), 20e-3, 2000, (probe, time) -> line(probe, time));
        WaveformFile crest = Runs.wave(folder.resolve("crest.csv"), 1e-3, 4000, (probe, time) -> cycle(probe, time));
        Waveforms waves = Waveforms.of(
                Runs.of(Runs.ONE_LINE + Runs.STEP_UP, 1, Map.of(DeckKind.MAINS, mains, DeckKind.CREST, crest)));
        assertThat(waves.decks()).extracting(Waveforms.Deck::missing).containsOnly("");
        assertThat(waves.decks().get(0).plots())
                .extracting(plot -> plot.y().name())
                .contains("Switch current", "Diode current", "Line current", "String current");
        assertThat(waves.decks().get(1).plots())
                .extracting(plot -> plot.y().name())
                .containsExactly("Inductor current", "Switch voltage", "Switch current", "Diode current");
    }

    @Test
    void aDeckWithoutWaveformSaysSo() {
        Waveforms none = Waveforms.of(Runs.of(Runs.ONE_LINE + Runs.STEP_UP));
        assertThat(none.decks())
                .extracting(Waveforms.Deck::missing)
                .containsExactly("There is no waveform of the deck mains.", "There is no waveform of the deck crest.");
        assertThat(Waveforms.ofEvents(Runs.of(Runs.ONE_LINE + Runs.STEP_UP)).decks())
                .isEmpty();
    }

    /** A surge is drawn with the rating that it must not pass. */
    @Test
    void eventsThatRanAreDrawnWithRatings() throws Exception {
        WaveformFile surge = Runs.wave(folder.resolve("surge.csv"), 200e-6, 400, (probe, time) -> 100.0);
        RunRecord run = Runs.of(Runs.ONE_LINE + Runs.STEP_UP, 1, Map.of(DeckKind.SURGE, surge));
        Waveforms events = Waveforms.ofEvents(run);
        assertThat(events.decks()).extracting(Waveforms.Deck::title).containsExactly("Surge");
        PlotView bus = events.decks().get(0).plots().get(2);
        assertThat(bus.y().name()).isEqualTo("Bus voltage");
        assertThat(bus.layers()).extracting(PlotView.Drawn::legend).contains("rating 630 V");
        assertThat(bus.x().unit()).isEqualTo("\u00b5s");
    }

    /** A sine of 2 mV peak at the terminals is 0.5 * 2 mV / sqrt 2 at each receiver: 57.0 dBuV. */
    @Test
    void simulatedNoiseIsDrawnAtItsLevel() throws Exception {
        WaveformFile noise = Runs.wave(
                folder.resolve("noise.csv"),
                25 * PERIOD,
                25 * 200,
                (probe, time) -> probe == Probe.LINE_VOLTAGE
                        ? 325 + 2e-3 * Math.sin(2 * Math.PI * time / PERIOD)
                        : cycle(probe, time));
        RunRecord run = Runs.of(Runs.ONE_LINE + Runs.STEP_UP, 1, Map.of(DeckKind.NOISE, noise));
        PlotView plot = NoisePlot.of(run).get(0);
        PlotView.Drawn simulated = plot.layers().stream()
                .filter(layer -> layer.legend().equals("simulated at the crest"))
                .findFirst()
                .orElseThrow();
        double level = 20 * Math.log10(0.5 * 2e-3 / Math.sqrt(2) / 1e-6);
        assertThat(level).isBetween(56.9, 57.1);
        assertThat(plot.description()).contains("simulated at the crest from 0 dBuV to 57.0 dBuV");
        assertThat(simulated.path()).startsWith("M");
    }

    @Test
    void predictedNoiseStandsAgainstItsLimits() {
        RunRecord run = Runs.of(Runs.ONE_LINE + Runs.STEP_UP);
        PlotView plot = NoisePlot.of(run).get(0);
        assertThat(plot.layers())
                .extracting(PlotView.Drawn::kind)
                .containsExactly("stem", "mean", "limit", "limit average");
        double second = run.predicted("noise.level.harmonic.2").orElseThrow();
        assertThat(second).isBetween(0.0, ConductedLimit.quasiPeak(100e3).orElseThrow() + 40);
        assertThat(plot.x().ticks()).extracting(Axis.Tick::label).contains("100", "200");
    }

    private static double line(Probe probe, double time) {
        return probe == Probe.LINE_VOLTAGE ? 325 * Math.sin(100 * Math.PI * time) : 1;
    }

    private static double cycle(Probe probe, double time) {
        return probe == Probe.GATE_VOLTAGE ? (time / PERIOD % 1 < 0.3 ? 1 : 0) : 1;
    }
}
