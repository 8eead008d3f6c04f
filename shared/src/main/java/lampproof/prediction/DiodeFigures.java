package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Sources.JUNCTION;
import static lampproof.prediction.Sources.MODEL;
import static lampproof.prediction.Sources.RMS;
import static lampproof.prediction.Sources.SWITCHED;

import java.util.List;
import lampproof.event.EventResult;
import lampproof.prediction.loss.Loss;

/** Figures of the freewheel diode. */
final class DiodeFigures {

    private DiodeFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("diode.current.peak", "I_D,pk", "A", PEAK)
                        .definition("maximum diode current")
                        .formula("I_L,pk")
                        .source(MODEL)
                        .crest(s -> s.crestStage().inductor().peak())
                        .mains(s -> s.stage().inductor().peak()),
                figure("diode.current.mean", "I_D,av", "A", MEAN)
                        .definition("mean diode current")
                        .formula("charge of the falling ramp / T")
                        .source(MODEL)
                        .crest(s -> s.crestStage().diode().mean())
                        .mains(s -> s.stage().diode().mean()),
                figure("diode.current.rms", "I_D", "A", MEAN)
                        .definition("rms diode current")
                        .formula("sqrt((a^2 + a b + b^2) t / (3 T))")
                        .source(RMS)
                        .crest(s -> s.crestStage().diode().rms())
                        .mains(s -> s.stage().diode().rms()),
                figure("diode.voltage.peak", "V_D,pk", "V", PEAK)
                        .definition("maximum reverse voltage of the diode")
                        .formula("step-up: V_o,pk; step-down: V_bus,pk")
                        .source(MODEL)
                        .crest(Solution::crestReverseVoltage)
                        .mains(Solution::reverseVoltage)
                        .openString(EventResult::reverseVoltage)
                        .surge(EventResult::reverseVoltage),
                figure("diode.loss.conduction", "P_D", "W", LOSS)
                        .definition("mean of diode voltage times diode current")
                        .formula("<i_D (n Vt ln(1 + i_D / Is) + R i_D)>")
                        .source(JUNCTION)
                        .crest(s -> s.crestStage().diode().conductionLoss())
                        .mains(s -> s.stage().diode().conductionLoss()),
                figure("diode.loss.reverse", "P_D,r", "W", LOSS)
                        .definition(
                                "mean of diode voltage times reverse diode current, if the deck contains the recovery")
                        .formula("<q (V - R i) f>, q = M Q_rr / I_rr; M follows i_D with the lifetime")
                        .source("P. O. Lauritzen, C. L. Ma, IEEE Trans. Power Electronics 6(2), 1991 (from memory), "
                                + "straight ramps of current")
                        .crest(s -> s.crestStage().diode().recoveryLoss())
                        .mains(s -> s.stage().diode().recoveryLoss())
                        .ifAny(),
                figure("diode.loss.recovery", "P_D,rr", "W", CALCULATED)
                        .definition(
                                "reverse voltage times recovered charge at each turn-off under current, mean over the half cycle")
                        .formula("<V Q_rr f> where the switch closes under current")
                        .source(SWITCHED + ", diode section")
                        .calculated(s -> s.losses().of(Loss.RECOVERY)));
    }
}
