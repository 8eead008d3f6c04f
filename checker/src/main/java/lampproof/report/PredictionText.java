package lampproof.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.prediction.loss.LossPart;
import lampproof.prediction.loss.Losses;
import lampproof.unit.PlainNumber;
import lampproof.unit.ValueStyle;

/** Predictions for a reader: first what each part loses, largest first, then every figure from the wall to the string. */
public final class PredictionText {

    private static final Set<String> PARTS =
            Arrays.stream(LossPart.values()).map(LossPart::figure).collect(Collectors.toSet());

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
            String share = total > 0 ? PlainNumber.percent(loss.value() / total, 1) : "";
            grid.add(List.of(
                    loss.figure().name(),
                    ValueStyle.FIGURES.text(loss.value(), "W"),
                    share,
                    isTotal(loss) ? "all of them" : loss.figure().definition()));
        }
        return grid.text();
    }

    /** The loss of each part and their total, which add up; the shares of a part are among the figures. */
    private static boolean isLoss(Prediction prediction) {
        return isNominal(prediction)
                && prediction.deck().isEmpty()
                && (isTotal(prediction) || PARTS.contains(prediction.figure().name()));
    }

    private static boolean isTotal(Prediction prediction) {
        return prediction.figure().name().equals(Losses.TOTAL);
    }

    private static boolean isNominal(Prediction prediction) {
        return prediction.corner() == Corner.NOMINAL;
    }

    /** A figure's values at the other line voltages are in the last of its rows, whose window they share. */
    private String figures(List<Prediction> predictions) {
        List<Corner> corners = predictions.stream()
                .map(Prediction::corner)
                .filter(corner -> corner != Corner.NOMINAL)
                .distinct()
                .toList();
        List<Prediction> nominal =
                predictions.stream().filter(PredictionText::isNominal).toList();
        Grid grid = new Grid("lrrl" + "r".repeat(corners.size())).add(head(corners), style::heading);
        for (int i = 0; i < nominal.size(); i++) {
            Prediction prediction = nominal.get(i);
            boolean last =
                    i + 1 == nominal.size() || !nominal.get(i + 1).figure().equals(prediction.figure());
            List<String> cells = new ArrayList<>(cells(prediction));
            corners.forEach(corner -> cells.add(last ? at(corner, prediction, predictions) : ""));
            grid.add(cells);
        }
        return grid.text();
    }

    private static List<String> head(List<Corner> corners) {
        List<String> head = new ArrayList<>(List.of("figure", "predicted", "tolerance", "deck"));
        corners.forEach(corner -> head.add(corner.word()));
        return head;
    }

    private static String at(Corner corner, Prediction prediction, List<Prediction> predictions) {
        return predictions.stream()
                .filter(each -> each.corner() == corner && each.figure().equals(prediction.figure()))
                .map(each -> ValueStyle.FIGURES.text(each.value(), each.figure().unit()))
                .findFirst()
                .orElse("");
    }

    private static String tolerance(Prediction prediction) {
        double allowed = prediction.tolerance().around(prediction.value());
        return "+- " + ValueStyle.FIGURES.text(allowed, prediction.figure().unit());
    }

    private static List<String> cells(Prediction prediction) {
        String unit = prediction.figure().unit();
        return List.of(
                prediction.figure().name(),
                ValueStyle.FIGURES.text(prediction.value(), unit),
                prediction.deck().map(deck -> tolerance(prediction)).orElse(""),
                prediction.deck().map(DeckKind::word).orElse(""));
    }
}
