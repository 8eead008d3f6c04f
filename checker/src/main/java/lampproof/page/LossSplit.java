package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import lampproof.prediction.DeckKind;

/** The loss over the line cycle, part by part, as two bars on one scale: predicted and simulated. */
final class LossSplit {

    private static final String TOTAL = "loss.total";

    /** A part of the whole and the figures that it is the difference of. */
    private record Part(String name, String figure, List<String> less) {}

    private static final List<Part> PARTS = List.of(
            new Part("Filter and line", "filter.loss", List.of()),
            new Part("Bridge", "bridge.loss", List.of()),
            new Part("Inductor winding", "inductor.loss.copper", List.of()),
            new Part("Switch, conduction", "switch.loss.conduction", List.of()),
            new Part("Switch, turn-on", "switch.loss", List.of("switch.loss.conduction", "sense.loss")),
            new Part("Sense resistor", "sense.loss", List.of()),
            new Part("Diode, conduction", "diode.loss.conduction", List.of()));

    private final RunRecord run;

    LossSplit(RunRecord run) {
        this.run = run;
    }

    /** The split; without bars where the total is not known. */
    Map<String, Object> model() {
        Function<String, OptionalDouble> predicted = figure -> run.predicted(DeckKind.MAINS, figure);
        Function<String, OptionalDouble> simulated = figure -> run.simulated(DeckKind.MAINS, figure);
        double most = Math.max(sum(predicted), sum(simulated));
        List<Map<String, Object>> bars = new ArrayList<>();
        if (most > 0) {
            bars.add(bar("predicted", predicted, most));
        }
        if (sum(simulated) > 0) {
            bars.add(bar("simulated", simulated, most));
        }
        NumberText text = NumberText.about(most, "W");
        return Map.of(
                "bars", bars,
                "unit", text.scaledUnit(),
                "rows", rows(text, predicted, simulated),
                "total", cells(text, predicted.apply(TOTAL), simulated.apply(TOTAL)));
    }

    private static double sum(Function<String, OptionalDouble> values) {
        return PARTS.stream().mapToDouble(part -> drawn(part, values)).sum();
    }

    private static OptionalDouble value(Part part, Function<String, OptionalDouble> values) {
        OptionalDouble whole = values.apply(part.figure());
        boolean known = whole.isPresent()
                && part.less().stream().allMatch(figure -> values.apply(figure).isPresent());
        ToDoubleFunction<String> loss = figure -> values.apply(figure).getAsDouble();
        return known
                ? OptionalDouble.of(whole.getAsDouble()
                        - part.less().stream().mapToDouble(loss).sum())
                : OptionalDouble.empty();
    }

    /** A bar has no length below zero. */
    private static double drawn(Part part, Function<String, OptionalDouble> values) {
        double value = value(part, values).orElse(0);
        return Double.isFinite(value) ? Math.max(0, value) : 0;
    }

    private static Map<String, Object> bar(String name, Function<String, OptionalDouble> values, double most) {
        List<Map<String, Object>> segments = new ArrayList<>();
        double left = 0;
        for (Part part : PARTS) {
            double width = Plot.WIDTH * drawn(part, values) / most;
            segments.add(Map.of(
                    "letter", letter(part),
                    "left", SvgPath.rounded(left),
                    "width", SvgPath.rounded(width),
                    "middle", SvgPath.rounded(left + width / 2)));
            left += width;
        }
        return Map.of("name", name, "segments", segments);
    }

    private static List<Map<String, Object>> rows(
            NumberText text, Function<String, OptionalDouble> predicted, Function<String, OptionalDouble> simulated) {
        OptionalDouble total = predicted.apply(TOTAL);
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Part part : PARTS) {
            OptionalDouble value = value(part, predicted);
            Map<String, Object> cells = cells(text, value, value(part, simulated));
            boolean shared = value.isPresent() && total.isPresent() && total.getAsDouble() > 0;
            String share =
                    shared ? String.format(Locale.ROOT, "%.1f", 100 * value.getAsDouble() / total.getAsDouble()) : "";
            rows.add(Map.of("letter", letter(part), "name", part.name(), "share", share, "cells", cells));
        }
        return rows;
    }

    private static Map<String, Object> cells(NumberText text, OptionalDouble predicted, OptionalDouble simulated) {
        return Map.of("predicted", text.column(predicted), "simulated", text.column(simulated));
    }

    private static String letter(Part part) {
        return String.valueOf((char) ('A' + PARTS.indexOf(part)));
    }
}
