package lampproof.report;

import java.util.List;
import java.util.Locale;
import lampproof.prediction.Figure;
import lampproof.prediction.Tolerance;

/** The catalogue of figures for a reader. */
public final class FigureText {

    private final Style style;

    /** Figures in a style. */
    public FigureText(Style style) {
        this.style = style;
    }

    /** The figures as lines. */
    public String text(List<Figure> figures) {
        Grid grid =
                new Grid("lllll").add(List.of("figure", "symbol", "unit", "tolerance", "definition"), style::heading);
        for (Figure figure : figures) {
            grid.add(List.of(figure.name(), figure.symbol(), figure.unit(), tolerance(figure), figure.definition()));
        }
        return grid.text();
    }

    private static String tolerance(Figure figure) {
        Tolerance tolerance = figure.grade().tolerance();
        String unit = figure.unit().equals("1") ? "" : " " + figure.unit();
        return tolerance.absolute() == 0
                ? String.format(Locale.ROOT, "%.3g %%", 100 * tolerance.relative())
                : String.format(Locale.ROOT, "+- %.3g%s", tolerance.absolute(), unit);
    }
}
