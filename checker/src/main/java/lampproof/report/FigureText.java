package lampproof.report;

import java.util.List;
import java.util.stream.Collectors;
import lampproof.prediction.Figure;
import lampproof.prediction.FigureCatalogue;
import lampproof.prediction.Grade;
import lampproof.prediction.Tolerance;
import lampproof.unit.PlainNumber;

/** The catalogue of figures for a reader. */
public final class FigureText {

    private final Style style;

    /** Figures in a style. */
    public FigureText(Style style) {
        this.style = style;
    }

    /** Each figure as a heading and its description. */
    public String text(List<Figure> figures) {
        return figures.stream().map(this::block).collect(Collectors.joining("\n"));
    }

    private String block(Figure figure) {
        String unit = figure.unit().equals("1") ? "" : " [" + figure.unit() + "]";
        Grid grid = new Grid("ll")
                .add(List.of("definition", figure.definition()))
                .add(List.of("window", FigureCatalogue.window(figure)))
                .add(List.of("formula", figure.formula()))
                .add(List.of("source", figure.source()))
                .add(List.of("tolerance", tolerance(figure)));
        return style.heading(figure.name()) + "  " + figure.symbol() + unit + "\n" + grid.text();
    }

    private static String tolerance(Figure figure) {
        return figure.grade() == Grade.CALCULATED
                ? "none, predicted only: " + figure.grade().reason()
                : width(figure) + ": " + figure.grade().reason();
    }

    private static String width(Figure figure) {
        Tolerance tolerance = figure.grade().tolerance();
        String unit = figure.unit().equals("1") ? "" : " " + figure.unit();
        return tolerance.absolute() == 0
                ? PlainNumber.significant(100 * tolerance.relative(), 3) + " %"
                : "+- " + PlainNumber.significant(tolerance.absolute(), 3) + unit;
    }
}
