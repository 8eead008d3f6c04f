package lampproof.prediction;

import static lampproof.prediction.FigureEntry.figure;
import static lampproof.prediction.Grade.CALCULATED;
import static lampproof.prediction.Grade.EFFICIENCY;
import static lampproof.prediction.Grade.LOSS;
import static lampproof.prediction.Sources.ENERGY;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import lampproof.prediction.loss.LossPart;
import lampproof.prediction.loss.Losses;

/** Loss of each part, over the line half cycle, and all of them together. */
final class LossFigures {

    private LossFigures() {}

    static List<FigureEntry> entries() {
        return Stream.concat(
                        Arrays.stream(LossPart.values()).map(LossFigures::of),
                        Stream.of(total(), efficiency(), circuitLoss(), circuitEfficiency()))
                .toList();
    }

    private static FigureEntry of(LossPart part) {
        return figure(part.figure(), part.symbol(), "W", CALCULATED)
                .definition(part.definition())
                .formula(part.formula())
                .source(part.source())
                .calculated(s -> s.losses().of(part));
    }

    private static FigureEntry total() {
        return figure(Losses.TOTAL, "P_loss", "W", LOSS)
                .definition("loss of the whole lamp, with the losses that no deck contains")
                .formula("sum of the losses of the parts")
                .source(ENERGY)
                .calculated(s -> s.losses().total());
    }

    private static FigureEntry efficiency() {
        return figure("efficiency", "eta", "%", EFFICIENCY)
                .definition("string power / (string power + loss of the whole lamp)")
                .formula("100 P_s / (P_s + P_loss)")
                .source(ENERGY)
                .calculated(Solution::efficiency);
    }

    private static FigureEntry circuitLoss() {
        return figure(Losses.CIRCUIT, "P_circuit", "W", LOSS)
                .definition("loss of the parts in the deck: line power - string power - change of stored energy")
                .formula("P_in - P_s - dE/dt")
                .source(ENERGY)
                .mains(Solution::circuitLoss);
    }

    private static FigureEntry circuitEfficiency() {
        return figure("circuit.efficiency", "eta_circuit", "%", EFFICIENCY)
                .definition("string power / (line power - change of stored energy), of the circuit in the deck")
                .formula("100 P_s / (P_s + P_circuit)")
                .source(ENERGY)
                .mains(s -> 100 * s.string().power() / (s.string().power() + s.circuitLoss()));
    }
}
