package lampproof.report;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lampproof.prediction.Prediction;
import lampproof.prediction.RuleVerdict;

/** Predictions for a reader: first what each part loses, largest first, then every figure from the wall to the string. */
public final class PredictionText {

    private static final String LOSS = "loss.";
    private static final String TOTAL = "loss.total";

    private final Style style;

    /** Predictions in a style. */
    public PredictionText(Style style) {
        this.style = style;
    }

    /** The predictions as lines. */
    public String text(List<Prediction> predictions) {
        return style.heading("losses over the line cycle, largest first") + "\n"
                + losses(predictions) + "\n"
                + style.heading("figures") + "\n"
                + figures(predictions);
    }

    /** What rules say of the driver as lines; a calculation is no proof of compliance, and the heading says so. */
    public String rules(List<RuleVerdict> verdicts) {
        String rules = verdicts.stream()
                .map(verdict -> "  " + Printable.of(verdict.text()) + "\n")
                .collect(Collectors.joining());
        return style.heading("rules, by calculation, which is no proof of compliance") + "\n" + rules;
    }

    private static String losses(List<Prediction> predictions) {
        List<Prediction> losses = predictions.stream()
                .filter(PredictionText::isLoss)
                .sorted(Comparator.comparing(PredictionText::isTotal)
                        .thenComparing(Prediction::value, Comparator.reverseOrder()))
                .toList();
        double total = losses.stream()
                .filter(PredictionText::isTotal)
                .mapToDouble(Prediction::value)
                .sum();
        Grid grid = new Grid("lrrl");
        for (Prediction loss : losses) {
            String share = total > 0 ? String.format(Locale.ROOT, "%.1f %%", 100 * loss.value() / total) : "";
            grid.add(List.of(
                    loss.figure().name(),
                    Quantity.text(loss.value(), "W"),
                    share,
                    isTotal(loss) ? "all of them" : loss.figure().definition()));
        }
        return grid.text();
    }

    /** The loss of each part and their total, which add up; what a part loses in several ways stands with the figures. */
    private static boolean isLoss(Prediction prediction) {
        return prediction.deck() == null && prediction.figure().name().startsWith(LOSS);
    }

    private static boolean isTotal(Prediction prediction) {
        return prediction.figure().name().equals(TOTAL);
    }

    private String figures(List<Prediction> predictions) {
        Grid grid = new Grid("lrrl").add(List.of("figure", "predicted", "tolerance", "deck"), style::heading);
        for (Prediction prediction : predictions) {
            String unit = prediction.figure().unit();
            grid.add(List.of(
                    prediction.figure().name(),
                    Quantity.text(prediction.value(), unit),
                    "+- " + Quantity.text(prediction.tolerance().around(prediction.value()), unit),
                    prediction.deck() == null ? "none" : prediction.deck().word()));
        }
        return grid.text();
    }
}
