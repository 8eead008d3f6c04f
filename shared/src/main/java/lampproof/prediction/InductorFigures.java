package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Sources.DOWELL;
import static lampproof.prediction.Sources.MODEL;
import static lampproof.prediction.Sources.OHM;
import static lampproof.prediction.Sources.RMS;
import static lampproof.prediction.Sources.STEINMETZ;

import java.util.List;
import lampproof.event.EventResult;

/** Figures of the inductor. */
final class InductorFigures {

    private InductorFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("inductor.current.peak", "I_L,pk", "A", PEAK, "greatest inductor current", MODEL)
                        .crest(s -> s.crestStage().inductorPeak())
                        .mains(s -> s.stage().inductorPeak())
                        .shortedString(EventResult::inductorCurrent)
                        .surge(EventResult::inductorCurrent)
                        .powerUp(EventResult::inductorCurrent),
                figure("inductor.current.rms", "I_L", "A", MEAN, "rms inductor current", RMS)
                        .crest(s -> s.crestStage().inductorRms())
                        .mains(s -> s.stage().inductorRms()),
                figure(
                                "inductor.current.ripple",
                                "dI_L",
                                "A",
                                PEAK,
                                "swing of the inductor current within a switching cycle",
                                MODEL)
                        .crest(s -> s.crestStage().inductorRipple()),
                figure(
                                "inductor.loss.copper",
                                "P_L,cu",
                                "W",
                                LOSS,
                                "loss in the winding at direct-current resistance",
                                OHM)
                        .crest(s -> s.crestStage().windingLoss())
                        .mains(s -> s.stage().windingLoss()),
                figure(
                                "inductor.loss.ac",
                                "P_L,ac",
                                "W",
                                CALCULATED,
                                "what skin and proximity add to the copper loss, mean over the half cycle",
                                DOWELL)
                        .calculated(s -> s.losses().proximity()),
                figure(
                                "inductor.loss.core",
                                "P_L,fe",
                                "W",
                                CALCULATED,
                                "core loss, mean over the half cycle of the flux triangle at each line angle",
                                STEINMETZ)
                        .calculated(s -> s.losses().core()),
                figure(
                                "inductor.flux.peak",
                                "B_pk",
                                "T",
                                CALCULATED,
                                "greatest flux density in the core",
                                "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 11.4")
                        .calculated(Solution::peakFlux),
                figure(
                                "inductor.saturation_margin",
                                "m_sat",
                                "%",
                                CALCULATED,
                                "saturation current over the greatest inductor current, less one",
                                "definition")
                        .calculated(Solution::saturationMargin));
    }
}
