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
                figure(
                                "loss.filter",
                                "P_filter",
                                "W",
                                CALCULATED,
                                "loss of fuse, filter, damping and line resistance",
                                "sum of the losses of the part")
                        .calculated(s -> s.losses().filter()),
                figure("loss.bridge", "P_bridge", "W", CALCULATED, "loss of bridge", "sum of the losses of the part")
                        .calculated(s -> s.losses().bridge()),
                figure(
                                "loss.capacitors",
                                "P_capacitors",
                                "W",
                                CALCULATED,
                                "loss of the capacitors of filter and bus",
                                "dissipation factor and series resistance; common practice, no source")
                        .calculated(s -> s.losses().capacitors()),
                figure("loss.bleeder", "P_bleeder", "W", CALCULATED, "loss of bleeder", "sum of the losses of the part")
                        .calculated(s -> s.losses().bleeder()),
                figure(
                                "loss.bias",
                                "P_bias",
                                "W",
                                CALCULATED,
                                "loss of controller supply",
                                "sum of the losses of the part")
                        .calculated(s -> s.losses().bias()),
                figure(
                                "loss.inductor",
                                "P_inductor",
                                "W",
                                CALCULATED,
                                "loss of winding and core of the inductor",
                                "sum of the losses of the part")
                        .calculated(s -> s.losses().inductor()),
                figure(
                                "loss.switch",
                                "P_switch",
                                "W",
                                CALCULATED,
                                "loss of switch and gate",
                                "sum of the losses of the part")
                        .calculated(s -> s.losses().powerSwitch()),
                figure(
                                "loss.snubber",
                                "P_snubber",
                                "W",
                                CALCULATED,
                                "loss of the snubber across the switch",
                                "P. C. Todd, Unitrode SEM-900 topic 2, 1993, from memory; form for two voltages derived")
                        .calculated(s -> s.losses().snubber()),
                figure(
                                "loss.sense",
                                "P_sense",
                                "W",
                                CALCULATED,
                                "loss of sense resistor",
                                "sum of the losses of the part")
                        .calculated(s -> s.losses().sense()),
                figure(
                                "loss.diode",
                                "P_diode",
                                "W",
                                CALCULATED,
                                "loss of freewheel diode, recovery included",
                                "sum of the losses of the part")
                        .calculated(s -> s.losses().diode()),
                figure(
                                "loss.output",
                                "P_output",
                                "W",
                                CALCULATED,
                                "loss of series resistance of the output capacitor",
                                "sum of the losses of the part")
                        .calculated(s -> s.losses().output()),
                figure(
                                "loss.total",
                                "P_loss",
                                "W",
                                LOSS,
                                "line power less string power less change of stored energy, in a deck of what it contains",
                                ENERGY)
                        .mains(Solution::circuitLoss)
                        .calculated(s -> s.losses().total()),
                figure(
                                "efficiency",
                                "eta",
                                "%",
                                EFFICIENCY,
                                "string power over line power less change of stored energy, in a deck of what it contains",
                                ENERGY)
                        .mains(s -> 100 * s.string().power() / (s.string().power() + s.circuitLoss()))
                        .calculated(Solution::efficiency));
    }
}
