package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.EFFICIENCY;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Sources.ENERGY;

import java.util.List;

/** Loss of each part, over the line half cycle, and all of them together. */
final class LossFigures {

    private LossFigures() {}

    static List<FigureEntry> entries() {
        return List.of(
                figure("loss.filter", "P_filter", "W", CALCULATED)
                        .definition("loss of fuse, filter, damping and line resistance")
                        .formula("P_f")
                        .source("sum of the losses of the part")
                        .calculated(s -> s.losses().filter()),
                figure("loss.bridge", "P_bridge", "W", CALCULATED)
                        .definition("loss of bridge")
                        .formula("P_br")
                        .source("sum of the losses of the part")
                        .calculated(s -> s.losses().bridge()),
                figure("loss.capacitors", "P_capacitors", "W", CALCULATED)
                        .definition("loss of the capacitors of filter and bus")
                        .formula("(w C V^2) tan delta + R_C I_C,bus^2")
                        .source("dissipation factor and series resistance; common practice, no source")
                        .calculated(s -> s.losses().capacitors()),
                figure("loss.bleeder", "P_bleeder", "W", CALCULATED)
                        .definition("loss of bleeder")
                        .formula("P_bl")
                        .source("sum of the losses of the part")
                        .calculated(s -> s.losses().bleeder()),
                figure("loss.bias", "P_bias", "W", CALCULATED)
                        .definition("loss of controller supply")
                        .formula("P_bias")
                        .source("sum of the losses of the part")
                        .calculated(s -> s.losses().bias()),
                figure("loss.inductor", "P_inductor", "W", CALCULATED)
                        .definition("loss of winding and core of the inductor")
                        .formula("P_L,cu + P_L,ac + P_L,fe")
                        .source("sum of the losses of the part")
                        .calculated(s -> s.losses().inductor()),
                figure("loss.switch", "P_switch", "W", CALCULATED)
                        .definition("loss of switch and gate")
                        .formula("P_Q,on + P_Q,ov + P_Q,C + P_Q,g")
                        .source("sum of the losses of the part")
                        .calculated(s -> s.losses().powerSwitch()),
                figure("loss.snubber", "P_snubber", "W", CALCULATED)
                        .definition("loss of the snubber across the switch")
                        .formula("<C_s (V_off^2 + V_on^2) f / 2>")
                        .source(
                                "P. C. Todd, Unitrode SEM-900 topic 2, 1993, from memory; form for two voltages derived")
                        .calculated(s -> s.losses().snubber()),
                figure("loss.sense", "P_sense", "W", CALCULATED)
                        .definition("loss of sense resistor")
                        .formula("P_R")
                        .source("sum of the losses of the part")
                        .calculated(s -> s.losses().sense()),
                figure("loss.diode", "P_diode", "W", CALCULATED)
                        .definition("loss of freewheel diode, recovery included")
                        .formula("P_D + P_D,rr")
                        .source("sum of the losses of the part")
                        .calculated(s -> s.losses().diode()),
                figure("loss.output", "P_output", "W", CALCULATED)
                        .definition("loss of series resistance of the output capacitor")
                        .formula("R_C I_C,o^2")
                        .source("sum of the losses of the part")
                        .calculated(s -> s.losses().output()),
                figure("loss.total", "P_loss", "W", LOSS)
                        .definition(
                                "line power less string power less change of stored energy, in a deck of what it contains")
                        .formula("sum of the losses of the parts = P_in - P_s - dE/dt")
                        .source(ENERGY)
                        .mains(Solution::circuitLoss)
                        .calculated(s -> s.losses().total()),
                figure("efficiency", "eta", "%", EFFICIENCY)
                        .definition(
                                "string power over line power less change of stored energy, in a deck of what it contains")
                        .formula("100 P_s / (P_s + P_loss)")
                        .source(ENERGY)
                        .mains(s -> 100 * s.string().power() / (s.string().power() + s.circuitLoss()))
                        .calculated(Solution::efficiency));
    }
}
