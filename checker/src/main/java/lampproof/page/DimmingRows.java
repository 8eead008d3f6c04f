package lampproof.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.dimming.DimmingFigure;

/**
 * Figures of a dimming curve.
 *
 * @param figures a row for each figure
 */
record DimmingRows(List<Row> figures) {

    /**
     * A figure.
     *
     * @param name its name
     * @param definition what it is
     * @param value its value with its unit; empty where there is none
     * @param note where on the curve, or which light
     */
    record Row(String name, String definition, String value, String note) {}

    static DimmingRows of(List<DimmingFigure> figures) {
        return new DimmingRows(figures.stream().map(DimmingRows::row).toList());
    }

    /** The value of a figure with its note, or the note alone. */
    static String text(DimmingFigure figure) {
        return Stream.of(ColumnText.text(figure.value(), figure.unit()), UnitSigns.signed(figure.note()))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static Row row(DimmingFigure figure) {
        return new Row(
                figure.name(),
                figure.definition(),
                ColumnText.text(figure.value(), figure.unit()),
                UnitSigns.signed(figure.note()));
    }
}
