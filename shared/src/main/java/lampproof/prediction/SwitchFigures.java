package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Sources.MODEL;
import static lampproof.prediction.Sources.OHM;
import static lampproof.prediction.Sources.RMS;
import static lampproof.prediction.Sources.SWITCHED;

import java.util.List;
import lampproof.event.EventResult;
import lampproof.prediction.loss.Loss;
import lampproof.quasistatic.StageStress;

/** Figures of the switch and the resistor that senses its current. */
final class SwitchFigures {

    private SwitchFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("switch.current.peak", "I_Q,pk", "A", PEAK)
                        .definition("maximum switch current outside the switching edges")
                        .formula("I_L,pk")
                        .source(MODEL)
                        .crest(s -> s.crestStage().inductor().peak())
                        .mains(s -> s.stage().inductor().peak())
                        .shortedString(EventResult::switchCurrent),
                figure("switch.current.rms", "I_Q", "A", MEAN)
                        .definition("rms switch current")
                        .formula("sqrt(sum over on-ramp, node rise and ring of their squares / T)")
                        .source(RMS)
                        .crest(s -> s.crestStage().powerSwitch().rms())
                        .mains(s -> s.stage().powerSwitch().rms()),
                figure("switch.current.mean", "I_Q,av", "A", MEAN)
                        .definition("mean switch current")
                        .formula("charge through the switch in a cycle / T")
                        .source(MODEL)
                        .crest(s -> s.crestStage().powerSwitch().mean())
                        .mains(s -> s.stage().powerSwitch().mean()),
                figure("switch.voltage.peak", "V_Q,pk", "V", PEAK)
                        .definition("maximum voltage of the switch node")
                        .formula("V_D,pk + v_D(I_L,pk)")
                        .source(MODEL)
                        .crest(Solution::crestNodeVoltage)
                        .mains(Solution::nodeVoltage)
                        .openString(EventResult::nodeVoltage)
                        .shortedString(EventResult::nodeVoltage)
                        .surge(EventResult::nodeVoltage),
                figure("switch.loss", "P_Q", "W", LOSS)
                        .definition("conduction and turn-on loss of switch and sense resistor")
                        .formula("(R_on + R_s) <i_on^2> + <1/2 C V^2 f>")
                        .source(OHM + "; half C V^2 f")
                        .crest(s -> switchLoss(s.crestStage()))
                        .mains(s -> switchLoss(s.stage())),
                figure("switch.loss.conduction", "P_Q,on", "W", LOSS)
                        .definition("loss in the on-resistance")
                        .formula("R_on <i_on^2>")
                        .source(OHM)
                        .crest(s -> s.crestStage().powerSwitch().conductionLoss())
                        .mains(s -> s.stage().powerSwitch().conductionLoss()),
                figure("switch.loss.overlap", "P_Q,ov", "W", CALCULATED)
                        .definition("voltage x current x transition time / 2 at each edge, mean over the half cycle")
                        .formula("<1/2 V I t_x f> at each edge")
                        .source(SWITCHED + ", MOSFET section")
                        .calculated(s -> s.losses().of(Loss.OVERLAP)),
                figure("switch.loss.capacitance", "P_Q,C", "W", CALCULATED)
                        .definition("energy of the node capacitance at turn-on, mean over the half cycle")
                        .formula("<1/2 C V^2 f>, V at each turn-on")
                        .source("half C V^2 f at the voltage of each turn-on; " + SWITCHED)
                        .calculated(s -> s.losses().of(Loss.CAPACITANCE)),
                figure("switch.loss.gate", "P_Q,g", "W", CALCULATED)
                        .definition("gate voltage times gate charge times frequency, mean over the half cycle")
                        .formula("V_g Q_g <f>")
                        .source(SWITCHED + ", MOSFET section")
                        .calculated(s -> s.losses().of(Loss.GATE)),
                figure("sense.loss", "P_R", "W", LOSS)
                        .definition("loss in the sense resistor")
                        .formula("R_s <i_on^2>")
                        .source(OHM)
                        .mains(s -> s.stage().powerSwitch().senseLoss()));
    }

    private static double switchLoss(StageStress stage) {
        return stage.powerSwitch().conductionLoss()
                + stage.powerSwitch().turnOnLoss()
                + stage.powerSwitch().senseLoss();
    }
}
