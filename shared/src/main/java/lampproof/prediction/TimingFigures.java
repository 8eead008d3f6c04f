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
                figure("switching.on_time", "t_on", "s", TIMING, "mean time in which the switch conducts", MODEL)
                        .crest(s -> s.crestStage().meanOnTime()),
                figure(
                                "switching.frequency.crest",
                                "f_crest",
                                "Hz",
                                TIMING,
                                "mean switching frequency at the crest of the line",
                                MODEL)
                        .crest(s -> s.crestStage().leastFrequency())
                        .mains(s -> s.crestStage().leastFrequency()),
                figure(
                                "switching.frequency.min",
                                "f_min",
                                "Hz",
                                CALCULATED,
                                "least switching frequency of the half cycle",
                                MODEL)
                        .calculated(s -> s.stage().leastFrequency()),
                figure(
                                "switching.frequency.max",
                                "f_max",
                                "Hz",
                                CALCULATED,
                                "greatest switching frequency of the half cycle",
                                MODEL)
                        .calculated(s -> s.stage().greatestFrequency()),
                figure(
                                "switching.mode_share.dcm",
                                "s_dcm",
                                "%",
                                CALCULATED,
                                "share of the switching cycles in which the inductor current rests at zero",
                                MODEL)
                        .calculated(s -> 100 * s.stage().discontinuousShare()));
    }
}
