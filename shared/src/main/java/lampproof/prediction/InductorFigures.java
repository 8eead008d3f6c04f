package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Sources.MODEL;
import static lampproof.prediction.Sources.OHM;
import static lampproof.prediction.Sources.RMS;

import java.util.List;
import lampproof.event.EventResult;
import lampproof.prediction.loss.Loss;

/** Figures of the inductor. */
final class InductorFigures {

    private InductorFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("inductor.current.peak", "I_L,pk", "A", PEAK)
                        .definition("maximum inductor current")
                        .formula("max (I_0 + E t_on / L), and up to the node passing E")
                        .source(MODEL)
                        .crest(s -> s.crestStage().inductor().peak())
                        .mains(s -> s.stage().inductor().peak())
                        .shortedString(EventResult::inductorCurrent)
                        .surge(EventResult::inductorCurrent)
                        .powerUp(EventResult::inductorCurrent),
                figure("inductor.current.rms", "I_L", "A", MEAN)
                        .definition("rms inductor current")
                        .formula("sqrt(sum of (a^2 + a b + b^2) t / 3 over the ramps / T)")
                        .source(RMS)
                        .crest(s -> s.crestStage().inductor().rms())
                        .mains(s -> s.stage().inductor().rms()),
                figure("inductor.current.ripple", "dI_L", "A", PEAK)
                        .definition("peak-to-peak inductor current within a switching cycle")
                        .formula("I_top - I_trough")
                        .source(MODEL)
                        .crest(s -> s.crestStage().inductor().ripple()),
                figure("inductor.loss.copper", "P_L,cu", "W", LOSS)
                        .definition("loss in the dc resistance of the winding")
                        .formula("R_w I_L^2")
                        .source(OHM)
                        .crest(s -> s.crestStage().inductor().loss())
                        .mains(s -> s.stage().inductor().loss()),
                figure("inductor.loss.ac", "P_L,ac", "W", CALCULATED)
                        .definition("additional copper loss from skin and proximity effect, mean over the half cycle")
                        .formula("R_w (F_R - 1) I_ac^2, F_R of layers and depth at the frequency of equal rms slope")
                        .source(
                                "P. L. Dowell, Proc. IEE 113(8), 1966, at the frequency of equal rms slope after "
                                        + "W. G. Hurley, E. Gath, J. G. Breslin, IEEE Trans. Power Electronics 15(2), 2000 (from memory)")
                        .calculated(s -> s.losses().of(Loss.PROXIMITY)),
                figure("inductor.loss.core", "P_L,fe", "W", CALCULATED)
                        .definition("core loss, mean over the half cycle of the flux triangle at each line angle")
                        .formula("V_e k_i (dB)^(beta - alpha) <|dB/dt|^alpha>")
                        .source("improved generalised Steinmetz equation; K. Venkatachalam, C. R. Sullivan, "
                                + "T. Abdallah, H. Tacca, IEEE COMPEL 2002")
                        .calculated(s -> s.losses().of(Loss.CORE)),
                figure("inductor.flux.peak", "B_pk", "T", CALCULATED)
                        .definition("maximum flux density in the core")
                        .formula("L I_L,pk / (N A_e)")
                        .source(
                                "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 11.4")
                        .calculated(Solution::peakFlux),
                figure("inductor.saturation_margin", "m_sat", "%", CALCULATED)
                        .definition("saturation current / maximum inductor current - 1")
                        .formula("100 (I_sat / I_L,pk - 1)")
                        .source("definition")
                        .calculated(Solution::saturationMargin));
    }
}
