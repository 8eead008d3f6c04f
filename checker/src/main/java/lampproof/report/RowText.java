package lampproof.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lampproof.design.DefaultRules;
import lampproof.file.CsvText;
import lampproof.spec.Choice;
import lampproof.spec.Entry;
import lampproof.spec.Quantity;
import lampproof.spec.Vocabulary;

/** The rows that a spec can have, for a reader or as an empty spec. */
public final class RowText {

    private static final List<String> HEADER = List.of("quantity", "min", "typ", "max", "unit", "note");
    private static final String REQUIRED = "none: required in every spec";

    private final Style style;

    /** Rows in a style. */
    public RowText(Style style) {
        this.style = style;
    }

    /** Each group as a heading, and each row with its range or words, its meaning, and its default below. */
    public String list() {
        return Vocabulary.groups().stream()
                .map(group -> style.heading(group) + "\n" + rows(Vocabulary.group(group)))
                .collect(Collectors.joining("\n"));
    }

    private static String rows(List<Entry> rows) {
        Grid grid = new Grid("lll");
        rows.forEach(row -> grid.add(List.of(row.name(), row.allowed(), row.meaning())));
        List<String> lines = grid.text().lines().toList();
        return IntStream.range(0, rows.size())
                .mapToObj(index -> lines.get(index) + "\n"
                        + Paragraph.of("default: " + rules(rows.get(index)), "      ", "        "))
                .collect(Collectors.joining());
    }

    /** Each row as a heading and everything about the row. */
    public String full(List<Entry> rows) {
        return rows.stream().map(this::block).collect(Collectors.joining("\n"));
    }

    private String block(Entry row) {
        Grid grid = new Grid("ll").add(List.of("meaning", row.meaning()));
        if (row instanceof Quantity quantity) {
            grid.add(List.of("range", row.allowed())).add(List.of("unit", units(quantity)));
        } else {
            grid.add(List.of("words", row.allowed()));
        }
        List<String> rules = DefaultRules.of(row);
        grid.add(List.of("default", rules.isEmpty() ? REQUIRED : rules.get(0)));
        rules.stream().skip(1).forEach(rule -> grid.add(List.of("", rule)));
        return style.heading(row.name()) + "\n" + grid.text();
    }

    private static String units(Quantity quantity) {
        String units = String.join(", ", quantity.dimension().spellings());
        return units.isEmpty() ? "none: a plain number" : units;
    }

    private static String rules(Entry row) {
        List<String> rules = DefaultRules.of(row);
        return rules.isEmpty() ? REQUIRED : String.join("; or ", rules);
    }

    /** An empty spec: the required rows without values, then every other row as a comment. */
    public static String blank() {
        List<Entry> required = Vocabulary.entries().stream()
                .filter(row -> Vocabulary.required().contains(row.name()))
                .toList();
        String others = Vocabulary.groups().stream()
                .map(group -> comments(Vocabulary.group(group).stream()
                        .filter(row -> !required.contains(row))
                        .toList()))
                .collect(Collectors.joining());
        return "# Fill in typ, or min, typ and max, of these rows. To give another row, delete its # and the blank.\n"
                + CsvText.of(HEADER, required.stream().map(RowText::cells).toList()) + others;
    }

    private static String comments(List<Entry> rows) {
        return "#\n"
                + CsvText.of(HEADER, rows.stream().map(RowText::cells).toList())
                        .lines()
                        .skip(1)
                        .map(line -> "# " + line + "\n")
                        .collect(Collectors.joining());
    }

    private static List<String> cells(Entry row) {
        String unit = row instanceof Quantity quantity ? quantity.dimension().unit() : "";
        String kind = row instanceof Choice ? "; words: " : "; range: ";
        String rule = DefaultRules.of(row).isEmpty() ? "" : "; default: " + rules(row);
        String note = row.meaning() + kind + row.allowed() + rule;
        return List.of(row.name(), "", "", "", unit, note);
    }
}
