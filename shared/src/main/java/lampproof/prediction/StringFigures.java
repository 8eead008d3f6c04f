package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Grade.PERCENT;
import static lampproof.prediction.Grade.POWER_FACTOR;
import static lampproof.prediction.Grade.TIMING;
import static lampproof.prediction.Sources.FLICKER;
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
                figure("string.current.mean", "I_s", "A", MEAN, "mean string current", MODEL)
                        .mains(s -> s.string().meanCurrent())
                        .dimmed(DimmedStress::stringCurrent),
                figure("string.current.peak", "I_s,pk", "A", PEAK, "greatest string current", MODEL)
                        .mains(s -> s.string().peakCurrent())
                        .powerUp(EventResult::stringCurrent),
                figure("string.power.mean", "P_s", "W", MEAN, "mean of output voltage times string current", MODEL)
                        .mains(s -> s.string().power())
                        .dimmed(DimmedStress::stringPower),
                figure(
                                "string.flicker.percent",
                                "Mod",
                                "%",
                                PERCENT,
                                "greatest less least over their sum, string current after a running mean of a hundredth of the half cycle",
                                FLICKER)
                        .mains(s -> 100 * s.string().percentFlicker()),
                figure(
                                "string.flicker.index",
                                "FI",
                                "1",
                                POWER_FACTOR,
                                "area above the mean over the whole area of the string current",
                                "ANSI/IES definition of the flicker index")
                        .mains(s -> s.string().flickerIndex()),
                figure("output.voltage.peak", "V_o,pk", "V", PEAK, "greatest output voltage", MODEL)
                        .mains(s -> s.string().peakVoltage())
                        .openString(EventResult::outputVoltage)
                        .surge(EventResult::outputVoltage)
                        .powerUp(EventResult::outputVoltage),
                figure(
                                "string.start_time",
                                "t_on",
                                "s",
                                TIMING,
                                "from the line coming on to half the mean string current",
                                MARCH)
                        .powerUp(EventResult::startTime),
                figure(
                                "string.current.ripple.line",
                                "dI_s,2f",
                                "A",
                                PEAK,
                                "greatest less least string current, averaged over switching cycles",
                                MODEL)
                        .mains(s -> s.string().lineRipple()),
                figure(
                                "string.current.ripple.switching",
                                "dI_s,sw",
                                "A",
                                PEAK,
                                "swing of the string current within a switching cycle at the crest of the line, less its drift over the cycle",
                                MODEL)
                        .crest(s -> s.crestString().switchingRipple()),
                figure(
                                "output.ripple_current.rms",
                                "I_C,o",
                                "A",
                                MEAN,
                                "rms of converter current less string current",
                                MODEL)
                        .mains(s -> s.string().capacitorRms()));
    }
}
