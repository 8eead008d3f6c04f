package lampproof.prediction;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.file.AtomicFile;
import lampproof.file.CsvReader;
import lampproof.file.CsvReader.Row;
import lampproof.file.CsvText;
import lampproof.spec.Keyword;

/** The predictions as a table: what the checker compares with. Numbers come back bit for bit. */
public final class PredictionTable {

    /** The header line. */
    public static final List<String> HEADER = List.of(
            "figure", "corner", "deck", "predicted", "unit", "tolerance_relative", "tolerance_absolute", "source");

    private static final CsvReader READER =
            new CsvReader("table of predictions", HEADER, "write the run folder again with 'lampproof deck'");
    private static final Map<String, Figure> FIGURES =
            FigureCatalogue.figures().stream().collect(Collectors.toMap(Figure::name, Function.identity()));

    private final List<Finding> findings = new ArrayList<>();

    private PredictionTable() {}

    /** The predictions as text. */
    public static String text(List<Prediction> predictions) {
        return CsvText.of(
                HEADER, predictions.stream().map(PredictionTable::cells).toList());
    }

    /**
     * Writes the predictions to a file of their own.
     *
     * @throws UserFault when it cannot be written, or a file of that name is no table of predictions
     */
    public static void write(Path path, List<Prediction> predictions) {
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS) && !READER.text(path).startsWith(String.join(",", HEADER))) {
            throw UserFault.badInput(Finding.of(
                    "the file exists and is not a table of predictions", path.toString(), "name another file"));
        }
        AtomicFile.write(path, text(predictions));
    }

    /**
     * Reads a table that lampproof wrote, or that someone changed since.
     *
     * @throws UserFault with every finding, each with its line and cell
     */
    public static List<Prediction> read(Path path) {
        PredictionTable table = new PredictionTable();
        List<Prediction> predictions = new ArrayList<>();
        READER.rows(
                READER.text(path),
                path.toString(),
                table.findings,
                row -> table.prediction(row).ifPresent(predictions::add));
        if (!table.findings.isEmpty()) {
            throw UserFault.badInput(table.findings);
        }
        return List.copyOf(predictions);
    }

    private static List<String> cells(Prediction prediction) {
        return List.of(
                prediction.figure().name(),
                prediction.corner().word(),
                prediction.deck().map(DeckKind::word).orElse(""),
                Double.toString(prediction.value()),
                prediction.figure().unit(),
                compared(prediction, prediction.tolerance().relative()),
                compared(prediction, prediction.tolerance().absolute()),
                prediction.figure().source());
    }

    /** What no deck shows is never compared, so it has no tolerance. */
    private static String compared(Prediction prediction, double tolerance) {
        return prediction.deck().isPresent() ? Double.toString(tolerance) : "";
    }

    private Optional<Prediction> prediction(Row row) {
        int before = findings.size();
        Optional<Figure> figure = figure(row);
        Optional<Corner> corner = keyword(row, 1, Corner.class);
        Optional<DeckKind> deck = row.cell(2).isEmpty() ? Optional.empty() : keyword(row, 2, DeckKind.class);
        double value = number(row, 3, Double.NEGATIVE_INFINITY);
        Tolerance tolerance = new Tolerance(tolerance(row, 5, deck), tolerance(row, 6, deck));
        return findings.size() > before
                ? Optional.empty()
                : Optional.of(new Prediction(figure.orElseThrow(), corner.orElseThrow(), deck, value, tolerance));
    }

    private Optional<Figure> figure(Row row) {
        Optional<Figure> figure = Optional.ofNullable(FIGURES.get(row.cell(0)));
        figure.filter(known -> !known.unit().equals(row.cell(4)))
                .ifPresent(known -> add(row, known.name() + " is in " + known.unit(), row.cell(4), ""));
        if (figure.isEmpty()) {
            String next =
                    NearestName.question(row.cell(0), FIGURES.keySet(), "list the figures with 'lampproof figures'");
            add(row, "unknown figure", row.cell(0), next);
        }
        return figure;
    }

    private <E extends Enum<E> & Keyword> Optional<E> keyword(Row row, int column, Class<E> type) {
        Optional<E> known = Keyword.of(type, row.cell(column));
        if (known.isEmpty()) {
            String allowed = String.join(", ", Keyword.words(type));
            findings.add(new Finding(
                    "this " + HEADER.get(column) + " is not known", row.place(), row.cell(column), allowed, ""));
        }
        return known;
    }

    private double tolerance(Row row, int column, Optional<DeckKind> deck) {
        return deck.isEmpty() && row.cell(column).isEmpty() ? 0 : number(row, column, 0);
    }

    private double number(Row row, int column, double least) {
        try {
            double value = Double.parseDouble(row.cell(column));
            if (Double.isFinite(value) && value >= least) {
                return value;
            }
        } catch (NumberFormatException e) {
            // rejected below, like a number that is not finite
        }
        String wanted = least == 0 ? " is a finite number from 0" : " is a finite number";
        add(row, HEADER.get(column) + wanted, row.cell(column), "");
        return Double.NaN;
    }

    private void add(Row row, String what, String found, String next) {
        findings.add(new Finding(what, row.place(), found, "", next));
    }
}
