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
        return Stream.concat(Arrays.stream(LossPart.values()).map(LossFigures::of), Stream.of(total(), efficiency()))
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
                .definition(
                        "line power - string power - change of stored energy; a deck contains only part of the losses")
                .formula("sum of the losses of the parts = P_in - P_s - dE/dt")
                .source(ENERGY)
                .mains(Solution::circuitLoss)
                .calculated(s -> s.losses().total());
    }

    private static FigureEntry efficiency() {
        return figure("efficiency", "eta", "%", EFFICIENCY)
                .definition(
                        "string power / (line power - change of stored energy); a deck contains only part of the losses")
                .formula("100 P_s / (P_s + P_loss)")
                .source(ENERGY)
                .mains(s -> 100 * s.string().power() / (s.string().power() + s.circuitLoss()))
                .calculated(Solution::efficiency);
    }
}
