package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Grade.PERCENT;
import static lampproof.prediction.Grade.POWER_FACTOR;
import static lampproof.prediction.Grade.TIMING;
import static lampproof.prediction.Sources.MARCH;
import static lampproof.prediction.Sources.MODEL;

import java.util.List;
import lampproof.event.EventResult;
import lampproof.quasistatic.dimmed.DimmedStress;

/** Figures of the string and the capacitor across it. */
final class StringFigures {

    private StringFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("string.current.mean", "I_s", "A", MEAN)
                        .definition("mean string current")
                        .formula("<i_s>, i_s = i_o - C_o dv_o/dt")
                        .source(MODEL)
                        .mains(s -> s.string().meanCurrent())
                        .dimmed(DimmedStress::stringCurrent),
                figure("string.current.peak", "I_s,pk", "A", PEAK)
                        .definition("maximum string current")
                        .formula("max (i_s + dV / (2 R_d))")
                        .source(MODEL)
                        .mains(s -> s.string().peakCurrent())
                        .powerUp(EventResult::stringCurrent),
                figure("string.power.mean", "P_s", "W", MEAN)
                        .definition("mean of output voltage times string current")
                        .formula("<v_o i_s>")
                        .source(MODEL)
                        .mains(s -> s.string().power())
                        .dimmed(DimmedStress::stringPower),
                figure("string.flicker.percent", "Mod", "%", PERCENT)
                        .definition(
                                "(maximum - minimum) / (maximum + minimum) of the string current, after a running mean of 1 % of the half cycle")
                        .formula("100 (max - min) / (max + min)")
                        .source("IEEE Std 1789-2015, clause 8.1.1")
                        .mains(s -> 100 * s.string().percentFlicker()),
                figure("string.flicker.index", "FI", "1", POWER_FACTOR)
                        .definition("area of the string current above its mean, divided by the total area")
                        .formula("area above the mean / total area")
                        .source("ANSI/IES definition of the flicker index")
                        .mains(s -> s.string().flickerIndex()),
                figure("output.voltage.peak", "V_o,pk", "V", PEAK)
                        .definition("maximum output voltage")
                        .formula("max (v_o + dV / 2)")
                        .source(MODEL)
                        .mains(s -> s.string().peakVoltage())
                        .openString(EventResult::outputVoltage)
                        .surge(EventResult::outputVoltage)
                        .powerUp(EventResult::outputVoltage),
                figure("string.start_time", "t_on", "s", TIMING)
                        .definition("time from switching on the mains to half the mean string current")
                        .formula("t of the first i_s = <i_s> / 2, of the averaged model from an empty bus")
                        .source(MARCH)
                        .powerUp(EventResult::startTime),
                figure("string.current.ripple.line", "dI_s,2f", "A", PEAK)
                        .definition("peak-to-peak string current, averaged over switching cycles")
                        .formula("max i_s - min i_s")
                        .source(MODEL)
                        .mains(s -> s.string().lineRipple()),
                figure("string.current.ripple.switching", "dI_s,sw", "A", PEAK)
                        .definition(
                                "peak-to-peak string current within a switching cycle at the line crest, without the drift over the cycle")
                        .formula("dV / R_d, dV = charge of i_D (step-up) or i_L (step-down) above its mean / C_o")
                        .source(MODEL)
                        .crest(s -> s.crestString().switchingRipple()),
                figure("output.ripple_current.rms", "I_C,o", "A", MEAN)
                        .definition("rms of (converter current - string current)")
                        .formula("sqrt(<i_conv^2> - 2 <i_conv i_s> + <i_s^2>)")
                        .source(MODEL)
                        .mains(s -> s.string().capacitorRms()));
    }
}
