package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.TIMING;
import static lampproof.prediction.Sources.MODEL;

import java.util.List;

/** Figures of the switching cycle. */
final class TimingFigures {

    private TimingFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("switching.on_time", "t_on", "s", TIMING)
                        .definition("mean on-time of the switch")
                        .formula("the set-point, or L (I_ref - I_0) / (E - R i + L m_a) and the delay")
                        .source(MODEL)
                        .crest(s -> s.crestStage().pace().onTime()),
                figure("switching.frequency.crest", "f_crest", "Hz", TIMING)
                        .definition("mean switching frequency at the crest of the line")
                        .formula("1 / (t_on + t_rise + t_diode + t_ring) at the crest")
                        .source(MODEL)
                        .crest(s -> s.crestStage().pace().leastFrequency())
                        .mains(s -> s.crestStage().pace().leastFrequency()),
                figure("switching.frequency.min", "f_min", "Hz", CALCULATED)
                        .definition("minimum switching frequency of the half cycle")
                        .formula("min 1 / T over the half cycle")
                        .source(MODEL)
                        .calculated(s -> s.stage().pace().leastFrequency()),
                figure("switching.frequency.max", "f_max", "Hz", CALCULATED)
                        .definition("maximum switching frequency of the half cycle")
                        .formula("max 1 / T over the half cycle")
                        .source(MODEL)
                        .calculated(s -> s.stage().pace().greatestFrequency()),
                figure("switching.mode_share.dcm", "s_dcm", "%", CALCULATED)
                        .definition("share of the switching cycles with discontinuous inductor current")
                        .formula("100 (cycles with the diode at rest) / (all cycles)")
                        .source(MODEL)
                        .calculated(s -> 100 * s.stage().pace().discontinuousShare()));
    }
}
