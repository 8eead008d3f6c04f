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
                figure("line.conduction_angle", "theta_c", "deg", ANGLE)
                        .definition("conduction angle of the bridge in a half cycle")
                        .formula("180 deg times the share of the half cycle with bridge current, averaged over 1 deg")
                        .source(MODEL)
                        .mains(s -> s.line().conductionAngle()),
                figure("bridge.current.mean", "I_br", "A", MEAN)
                        .definition("mean current out of the bridge")
                        .formula("<i_br>, i_br = i_conv + C_bus dv/dt while the bridge conducts")
                        .source(MODEL)
                        .mains(s -> s.line().bridgeMean()),
                figure("bridge.current.rms", "I_br,rms", "A", MEAN)
                        .definition("rms current out of the bridge")
                        .formula("sqrt(<i_br^2>)")
                        .source(MODEL)
                        .mains(s -> s.line().bridgeRms()),
                figure("bridge.voltage.peak", "V_br,pk", "V", PEAK)
                        .definition(
                                "maximum reverse voltage of a bridge diode: bus voltage plus half the drop of the two conducting diodes")
                        .formula("V_bus,pk + v_D(i)")
                        .source(MODEL)
                        .mains(Solution::bridgeReverseVoltage),
                figure("bridge.loss", "P_br", "W", LOSS)
                        .definition("mean of bridge voltage times bridge current")
                        .formula("<2 i_br (n Vt ln(1 + i_br / Is) + R i_br)>")
                        .source(JUNCTION)
                        .mains(s -> s.line().bridgeLoss()),
                figure("filter.loss", "P_f", "W", LOSS)
                        .definition("loss in fuse, filter winding and line resistance")
                        .formula(
                                "<R i^2> with R = R_fuse + R_line + R_w R_d / (R_w + R_d), plus the loss of the switching ripple")
                        .source(OHM)
                        .mains(s -> s.line().filterLoss()),
                figure("bus.voltage.peak", "V_bus,pk", "V", PEAK)
                        .definition("maximum bus voltage")
                        .formula("max (V sin theta - drops, held voltage) + half the switching ripple")
                        .source(MODEL)
                        .mains(s -> s.line().busPeak())
                        .dimmed(DimmedStress::busPeak)
                        .openString(EventResult::busVoltage)
                        .shortedString(EventResult::busVoltage)
                        .surge(EventResult::busVoltage)
                        .powerUp(EventResult::busVoltage),
                figure("bus.ripple_current.rms", "I_C,bus", "A", MEAN)
                        .definition("rms current of the bus capacitor")
                        .formula(
                                "sqrt(<i_br^2> - <i_conv>^2 + sum I_n^2 / 2), six switching harmonics, without their current in the filter")
                        .source(MODEL)
                        .mains(s -> s.line().busRippleCurrent()),
                figure("bus.voltage.valley", "V_bus,min", "V", CALCULATED)
                        .definition("minimum bus voltage, with switching ripple")
                        .formula(
                                "min (held voltage less half the switching ripple, not below the output of a step-down converter)")
                        .source(MODEL)
                        .calculated(Solution::busValley));
    }
}
