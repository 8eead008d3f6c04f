package lampproof.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The headline of a lamp for a reader: what decks show with its simulated values, then what only the model knows. */
public final class HeadlineText {

    private final Style style;

    /** Headlines in a style. */
    public HeadlineText(Style style) {
        this.style = style;
    }

    /** The headline of a named lamp. */
    public String text(String name, Headline headline) {
        return style.heading(Printable.of(name)) + ": " + headline.lamp() + "\n" + lines(headline);
    }

    /**
     * The headlines of several lamps side by side.
     *
     * @param names name of each lamp
     * @param headlines headline of each lamp
     * @param further more rows, each with its name and a cell for each lamp
     */
    String sideBySide(List<String> names, List<Headline> headlines, List<List<String>> further) {
        Grid grid = new Grid("l" + "r".repeat(names.size())).add(row("", names), style::heading);
        List<Headline.Line> lines = headlines.get(0).lines();
        for (int k = 0; k < lines.size(); k++) {
            int at = k;
            grid.add(row(
                    lines.get(k).name(),
                    headlines.stream()
                            .map(headline -> headline.lines().get(at).predicted())
                            .toList()));
        }
        further.forEach(grid::add);
        return grid.text();
    }

    private static List<String> row(String name, List<String> cells) {
        return Stream.concat(Stream.of(name), cells.stream()).toList();
    }

    private String lines(Headline headline) {
        int width = headline.lines().stream()
                .mapToInt(line -> line.name().length())
                .max()
                .orElse(0);
        Grid values = new Grid("lrr");
        if (headline.isSimulated()) {
            values.add(List.of(" ".repeat(width), "predicted", "simulated"), style::heading);
        }
        headline.values().forEach(line -> values.add(List.of(pad(line, width), line.predicted(), line.simulated())));
        return values.text() + words(headline.words().stream(), width);
    }

    private static String words(Stream<Headline.Line> lines, int width) {
        return lines.map(line -> "  " + pad(line, width) + "  " + line.predicted() + "\n")
                .collect(Collectors.joining());
    }

    private static String pad(Headline.Line line, int width) {
        return line.name() + " ".repeat(width - line.name().length());
    }
}
