package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.ANGLE;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Sources.JUNCTION;
import static lampproof.prediction.Sources.MODEL;
import static lampproof.prediction.Sources.OHM;

import java.util.List;
import lampproof.event.EventResult;
import lampproof.quasistatic.dimmed.DimmedStress;

/** Figures of filter, bridge and bus. */
final class BusFigures {

    private BusFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure(
                                "line.conduction_angle",
                                "theta_c",
                                "deg",
                                ANGLE,
                                "angle of a half cycle in which the bridge conducts",
                                MODEL)
                        .mains(s -> s.line().conductionAngle()),
                figure("bridge.current.mean", "I_br", "A", MEAN, "mean current out of the bridge", MODEL)
                        .mains(s -> s.line().bridgeMean()),
                figure("bridge.current.rms", "I_br,rms", "A", MEAN, "rms current out of the bridge", MODEL)
                        .mains(s -> s.line().bridgeRms()),
                figure(
                                "bridge.voltage.peak",
                                "V_br,pk",
                                "V",
                                PEAK,
                                "greatest reverse voltage of a bridge diode: bus and half the drop of the conducting two",
                                MODEL)
                        .mains(Solution::bridgeReverseVoltage),
                figure("bridge.loss", "P_br", "W", LOSS, "mean of bridge voltage times bridge current", JUNCTION)
                        .mains(s -> s.line().bridgeLoss()),
                figure("filter.loss", "P_f", "W", LOSS, "loss in fuse, filter winding and line resistance", OHM)
                        .mains(s -> s.line().filterLoss()),
                figure("bus.voltage.peak", "V_bus,pk", "V", PEAK, "greatest bus voltage", MODEL)
                        .mains(s -> s.line().busPeak())
                        .dimmed(DimmedStress::busPeak)
                        .openString(EventResult::busVoltage)
                        .shortedString(EventResult::busVoltage)
                        .surge(EventResult::busVoltage)
                        .powerUp(EventResult::busVoltage),
                figure("bus.ripple_current.rms", "I_C,bus", "A", MEAN, "rms current of the bus capacitor", MODEL)
                        .mains(s -> s.line().busRippleCurrent()),
                figure(
                                "bus.voltage.valley",
                                "V_bus,min",
                                "V",
                                CALCULATED,
                                "least bus voltage, switching ripple included",
                                MODEL)
                        .calculated(Solution::busValley));
    }
}
