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
import lampproof.quasistatic.StageStress;

/** Figures of the switch and the resistor that senses its current. */
final class SwitchFigures {

    private SwitchFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure(
                                "switch.current.peak",
                                "I_Q,pk",
                                "A",
                                PEAK,
                                "greatest switch current outside the switching edges",
                                MODEL)
                        .crest(s -> s.crestStage().inductorPeak())
                        .mains(s -> s.stage().inductorPeak())
                        .shortedString(EventResult::switchCurrent),
                figure("switch.current.rms", "I_Q", "A", MEAN, "rms switch current", RMS)
                        .crest(s -> s.crestStage().switchRms())
                        .mains(s -> s.stage().switchRms()),
                figure("switch.current.mean", "I_Q,av", "A", MEAN, "mean switch current", MODEL)
                        .crest(s -> s.crestStage().switchMean())
                        .mains(s -> s.stage().switchMean()),
                figure("switch.voltage.peak", "V_Q,pk", "V", PEAK, "greatest voltage of the switch node", MODEL)
                        .crest(Solution::crestNodeVoltage)
                        .mains(Solution::nodeVoltage)
                        .openString(EventResult::nodeVoltage)
                        .shortedString(EventResult::nodeVoltage)
                        .surge(EventResult::nodeVoltage),
                figure(
                                "switch.loss",
                                "P_Q",
                                "W",
                                LOSS,
                                "conduction and turn-on loss, seen from the terminals with the sense resistor",
                                OHM + "; half C V^2 f")
                        .crest(s -> switchLoss(s.crestStage()))
                        .mains(s -> switchLoss(s.stage())),
                figure("switch.loss.conduction", "P_Q,on", "W", LOSS, "loss in the on-resistance", OHM)
                        .crest(s -> s.crestStage().conductionLoss())
                        .mains(s -> s.stage().conductionLoss()),
                figure(
                                "switch.loss.overlap",
                                "P_Q,ov",
                                "W",
                                CALCULATED,
                                "half voltage times current times transition time at each edge, mean over the half cycle",
                                "Infineon DN 2013-01 rev. 1.1, 2016, MOSFET section")
                        .calculated(s -> s.losses().overlap()),
                figure(
                                "switch.loss.capacitance",
                                "P_Q,C",
                                "W",
                                CALCULATED,
                                "energy of the node capacitance at turn-on, mean over the half cycle",
                                "half C V^2 f at the voltage of each turn-on; Infineon DN 2013-01 rev. 1.1, 2016")
                        .calculated(s -> s.losses().capacitance()),
                figure(
                                "switch.loss.gate",
                                "P_Q,g",
                                "W",
                                CALCULATED,
                                "gate voltage times gate charge times frequency, mean over the half cycle",
                                "Infineon DN 2013-01 rev. 1.1, 2016, MOSFET section")
                        .calculated(s -> s.losses().gate()),
                figure("sense.loss", "P_R", "W", LOSS, "loss in the sense resistor", OHM)
                        .mains(s -> s.stage().senseLoss()));
    }

    private static double switchLoss(StageStress stage) {
        return stage.conductionLoss() + stage.turnOnLoss() + stage.senseLoss();
    }
}
