package lampproof.report;

import java.util.List;
import java.util.function.UnaryOperator;
import lampproof.instrument.CaptureFigure;
import lampproof.instrument.CaptureLimit;
import lampproof.instrument.CaptureReport;
import lampproof.instrument.CaptureSection;
import lampproof.instrument.Mapping;
import lampproof.measure.Measured;
import lampproof.unit.PlainNumber;
import lampproof.unit.ValueStyle;

/** The figures of a capture for a reader: first what was recognised, then each section with its window and limits. */
public final class CaptureText {

    private final Style style;

    /** Captures in a style. */
    public CaptureText(Style style) {
        this.style = style;
    }

    /** The figures as lines. */
    public String text(CaptureReport report) {
        StringBuilder text = new StringBuilder(
                style.heading(Printable.of(report.file())) + ": " + Printable.of(report.form()) + "\n");
        report.mappings()
                .forEach(mapping ->
                        text.append(Printable.of("  " + text(mapping))).append("\n"));
        report.remarks()
                .forEach(remark -> text.append(style.bad("  remark: " + Printable.of(remark)))
                        .append("\n"));
        report.sections().forEach(section -> text.append("\n").append(text(section)));
        return text.toString();
    }

    private static String text(Mapping mapping) {
        String text = mapping.quantity() + " = '" + mapping.column() + "'";
        text += mapping.gain() == 1 ? "" : " * " + number(mapping.gain());
        text += mapping.offset() == 0
                ? ""
                : (mapping.offset() < 0 ? " - " : " + ") + number(Math.abs(mapping.offset()));
        return mapping.delay() == 0 ? text : text + ", " + number(1e6 * mapping.delay()) + " us late";
    }

    private static String number(double value) {
        return PlainNumber.significant(value, 6);
    }

    private String text(CaptureSection section) {
        Grid grid = new Grid("lrl");
        section.figures().forEach(figure -> grid.add(cells(figure)));
        Grid limits = new Grid("lll");
        section.limits().forEach(limit -> limits.add(cells(limit), paint(limit)));
        return style.heading(section.title()) + ", " + Printable.of(section.window()) + "\n" + grid.text()
                + limits.text();
    }

    private static List<String> cells(CaptureFigure figure) {
        Measured value = figure.value();
        String number = value.present() ? ValueStyle.FIGURES.text(value.value(), figure.unit()) : "none";
        return List.of(figure.name(), number, Printable.of(value.note()));
    }

    private static List<String> cells(CaptureLimit limit) {
        return List.of(limit.rule(), limit.verdict(), Printable.of(limit.text()));
    }

    private UnaryOperator<String> paint(CaptureLimit limit) {
        return switch (limit.verdict()) {
            case "kept" -> style::good;
            case "not kept" -> style::bad;
            default -> UnaryOperator.identity();
        };
    }
}
