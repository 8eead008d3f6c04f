package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.ANGLE;
import static lampproof.prediction.Grade.EFFICIENCY;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Grade.MEAN;
import static lampproof.prediction.Grade.PEAK;
import static lampproof.prediction.Grade.PERCENT;
import static lampproof.prediction.Grade.POWER_FACTOR;
import static lampproof.prediction.Grade.TIMING;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.quasistatic.StageStress;

/** Every figure that lampproof knows, in the order of the power from the wall to the string. */
public final class FigureCatalogue {

    private static final String MODEL = "quasi-static model of this project; one switching cycle per line angle, after "
            + "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, ch. 21";
    private static final String RMS_SOURCE =
            "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, app. A";
    private static final String LINE_SOURCE =
            "R. W. Erickson, D. Maksimovic, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 20.3";
    private static final String FLICKER_SOURCE = "IEEE Std 1789-2015, clause 8.1.1";
    private static final String OHM = "resistance times square of the rms current";
    private static final String ENERGY = "balance of energy";
    private static final int HIGHEST_ORDER = 39;

    private static final List<FigureEntry> ENTRIES = Stream.of(
                    line(),
                    harmonics(),
                    bridgeAndBus(),
                    inductor(),
                    powerSwitch(),
                    diode(),
                    timing(),
                    string(),
                    whole())
            .flatMap(List::stream)
            .toList();

    private FigureCatalogue() {}

    static List<FigureEntry> entries() {
        return ENTRIES;
    }

    /** The figures, in order. */
    public static List<Figure> figures() {
        return ENTRIES.stream().map(FigureEntry::figure).toList();
    }

    private static List<FigureEntry> line() {
        return List.of(
                figure("line.power.mean", "P_in", "W", MEAN, "mean of line voltage times line current", MODEL)
                        .mains(s -> s.line().power()),
                figure("line.current.rms", "I_in", "A", MEAN, "rms of the line current", MODEL)
                        .mains(s -> s.line().current()),
                figure("line.current.peak", "I_in,pk", "A", PEAK, "greatest magnitude of the line current", MODEL)
                        .mains(s -> s.line().peakCurrent()),
                figure(
                                "line.power_factor",
                                "PF",
                                "1",
                                POWER_FACTOR,
                                "mean power over rms voltage times rms current",
                                LINE_SOURCE)
                        .mains(s -> s.line().powerFactor(s.driver().line().voltage())),
                figure(
                                "line.displacement_factor",
                                "cos phi1",
                                "1",
                                POWER_FACTOR,
                                "cosine of the angle from line voltage to fundamental current",
                                LINE_SOURCE)
                        .mains(s -> s.line().displacementFactor()),
                figure(
                                "line.current.thd",
                                "THD",
                                "%",
                                PERCENT,
                                "rms of harmonics 2 to 39 over the fundamental",
                                LINE_SOURCE)
                        .mains(s -> 100 * s.line().spectrum().thd()));
    }

    private static List<FigureEntry> harmonics() {
        return IntStream.rangeClosed(1, (HIGHEST_ORDER - 1) / 2)
                .mapToObj(k -> harmonic(2 * k + 1))
                .toList();
    }

    private static FigureEntry harmonic(int order) {
        String definition = "harmonic " + order + " of the line current over the fundamental";
        return figure("line.current.harmonic." + order, "I_" + order + "/I_1", "%", PERCENT, definition, LINE_SOURCE)
                .mains(s -> 100 * s.line().spectrum().relative(order));
    }

    private static List<FigureEntry> bridgeAndBus() {
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
                                "bridge.loss",
                                "P_br",
                                "W",
                                LOSS,
                                "mean of bridge voltage times bridge current",
                                "junction law of the deck's diode")
                        .mains(s -> s.line().bridgeLoss()),
                figure("filter.loss", "P_f", "W", LOSS, "loss in fuse, filter winding and line resistance", OHM)
                        .mains(s -> s.line().filterLoss()),
                figure("bus.voltage.peak", "V_bus,pk", "V", PEAK, "greatest bus voltage", MODEL)
                        .mains(s -> s.line().busPeak()),
                figure("bus.ripple_current.rms", "I_C,bus", "A", MEAN, "rms current of the bus capacitor", MODEL)
                        .mains(s -> s.line().busRippleCurrent()));
    }

    private static List<FigureEntry> inductor() {
        return List.of(
                figure("inductor.current.peak", "I_L,pk", "A", PEAK, "greatest inductor current", MODEL)
                        .crest(s -> s.crestStage().inductorPeak())
                        .mains(s -> s.stage().inductorPeak()),
                figure("inductor.current.rms", "I_L", "A", MEAN, "rms inductor current", RMS_SOURCE)
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
                        .mains(s -> s.stage().windingLoss()));
    }

    private static List<FigureEntry> powerSwitch() {
        return List.of(
                figure(
                                "switch.current.peak",
                                "I_Q,pk",
                                "A",
                                PEAK,
                                "greatest switch current outside the switching edges",
                                MODEL)
                        .crest(s -> s.crestStage().inductorPeak())
                        .mains(s -> s.stage().inductorPeak()),
                figure("switch.current.rms", "I_Q", "A", MEAN, "rms switch current", RMS_SOURCE)
                        .crest(s -> s.crestStage().switchRms())
                        .mains(s -> s.stage().switchRms()),
                figure("switch.current.mean", "I_Q,av", "A", MEAN, "mean switch current", MODEL)
                        .crest(s -> s.crestStage().switchMean())
                        .mains(s -> s.stage().switchMean()),
                figure("switch.voltage.peak", "V_Q,pk", "V", PEAK, "greatest voltage of the switch node", MODEL)
                        .crest(Solution::crestNodeVoltage)
                        .mains(Solution::nodeVoltage),
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
                        .mains(s -> s.stage().conductionLoss()));
    }

    private static List<FigureEntry> diode() {
        return List.of(
                figure("diode.current.peak", "I_D,pk", "A", PEAK, "greatest diode current", MODEL)
                        .crest(s -> s.crestStage().inductorPeak())
                        .mains(s -> s.stage().inductorPeak()),
                figure("diode.current.mean", "I_D,av", "A", MEAN, "mean diode current", MODEL)
                        .crest(s -> s.crestStage().diodeMean())
                        .mains(s -> s.stage().diodeMean()),
                figure("diode.current.rms", "I_D", "A", MEAN, "rms diode current", RMS_SOURCE)
                        .crest(s -> s.crestStage().diodeRms())
                        .mains(s -> s.stage().diodeRms()),
                figure("diode.voltage.peak", "V_D,pk", "V", PEAK, "greatest reverse voltage of the diode", MODEL)
                        .crest(Solution::crestReverseVoltage)
                        .mains(Solution::reverseVoltage),
                figure(
                                "diode.loss.conduction",
                                "P_D",
                                "W",
                                LOSS,
                                "mean of diode voltage times diode current",
                                "junction law of the deck's diode")
                        .crest(s -> s.crestStage().diodeLoss())
                        .mains(s -> s.stage().diodeLoss()));
    }

    private static List<FigureEntry> timing() {
        return List.of(
                figure("switching.on_time", "t_on", "s", TIMING, "mean time in which the switch conducts", MODEL)
                        .crest(s -> s.crestStage().meanOnTime()),
                figure(
                                "switching.frequency.crest",
                                "f_crest",
                                "Hz",
                                TIMING,
                                "mean switching frequency at the crest of the line",
                                MODEL)
                        .crest(s -> s.crestStage().leastFrequency())
                        .mains(s -> s.crestStage().leastFrequency()));
    }

    private static List<FigureEntry> string() {
        return List.of(
                figure("string.current.mean", "I_s", "A", MEAN, "mean string current", MODEL)
                        .mains(s -> s.string().meanCurrent()),
                figure("string.current.peak", "I_s,pk", "A", PEAK, "greatest string current", MODEL)
                        .mains(s -> s.string().peakCurrent()),
                figure("string.power.mean", "P_s", "W", MEAN, "mean of output voltage times string current", MODEL)
                        .mains(s -> s.string().power()),
                figure(
                                "string.flicker.percent",
                                "Mod",
                                "%",
                                PERCENT,
                                "greatest less least over their sum, string current after a running mean of a hundredth of the half cycle",
                                FLICKER_SOURCE)
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
                        .mains(s -> s.string().peakVoltage()),
                figure("sense.loss", "P_R", "W", LOSS, "loss in the sense resistor", OHM)
                        .mains(s -> s.stage().senseLoss()));
    }

    private static List<FigureEntry> whole() {
        return List.of(
                figure(
                                "loss.total",
                                "P_loss",
                                "W",
                                LOSS,
                                "line power less string power less change of stored energy, of what the deck contains",
                                ENERGY)
                        .mains(Solution::circuitLoss),
                figure(
                                "efficiency",
                                "eta",
                                "%",
                                EFFICIENCY,
                                "string power over line power less change of stored energy, of what the deck contains",
                                ENERGY)
                        .mains(s -> 100 * s.string().power() / (s.string().power() + s.circuitLoss())));
    }

    private static double switchLoss(StageStress stage) {
        return stage.conductionLoss() + stage.turnOnLoss() + stage.senseLoss();
    }
}
