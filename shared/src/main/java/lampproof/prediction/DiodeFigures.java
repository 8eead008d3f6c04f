package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Sources.JUNCTION;
import static lampproof.prediction.Sources.MODEL;
import static lampproof.prediction.Sources.RECOVERY;
import static lampproof.prediction.Sources.RMS;

import java.util.List;
import lampproof.event.EventResult;

/** Figures of the freewheel diode. */
final class DiodeFigures {

    private DiodeFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("diode.current.peak", "I_D,pk", "A", PEAK, "greatest diode current", MODEL)
                        .crest(s -> s.crestStage().inductorPeak())
                        .mains(s -> s.stage().inductorPeak()),
                figure("diode.current.mean", "I_D,av", "A", MEAN, "mean diode current", MODEL)
                        .crest(s -> s.crestStage().diodeMean())
                        .mains(s -> s.stage().diodeMean()),
                figure("diode.current.rms", "I_D", "A", MEAN, "rms diode current", RMS)
                        .crest(s -> s.crestStage().diodeRms())
                        .mains(s -> s.stage().diodeRms()),
                figure("diode.voltage.peak", "V_D,pk", "V", PEAK, "greatest reverse voltage of the diode", MODEL)
                        .crest(Solution::crestReverseVoltage)
                        .mains(Solution::reverseVoltage)
                        .openString(EventResult::reverseVoltage)
                        .surge(EventResult::reverseVoltage),
                figure("diode.loss.conduction", "P_D", "W", LOSS, "mean of diode voltage times diode current", JUNCTION)
                        .crest(s -> s.crestStage().diodeLoss())
                        .mains(s -> s.stage().diodeLoss()),
                figure(
                                "diode.loss.reverse",
                                "P_D,r",
                                "W",
                                LOSS,
                                "mean of diode voltage times reverse diode current, where it recovers in the deck",
                                RECOVERY)
                        .crest(s -> s.crestStage().recoveryLoss())
                        .mains(s -> s.stage().recoveryLoss())
                        .ifAny(),
                figure(
                                "diode.loss.recovery",
                                "P_D,rr",
                                "W",
                                CALCULATED,
                                "reverse voltage times recovered charge at each turn-off under current, mean over the half cycle",
                                "Infineon DN 2013-01 rev. 1.1, 2016, diode section")
                        .calculated(s -> s.losses().recovery()));
    }
}
