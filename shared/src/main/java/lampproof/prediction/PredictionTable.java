package lampproof.prediction;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.file.SheetText;
import lampproof.file.WholeFile;
import lampproof.spec.Keyword;
import lampproof.spec.Nearest;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The predictions as a table: what the checker compares with. Numbers come back bit for bit. */
public final class PredictionTable {

    /** The header line. */
    public static final List<String> HEADER = List.of(
            "figure", "corner", "deck", "predicted", "unit", "tolerance_relative", "tolerance_absolute", "source");

    private static final long LIMIT = 1 << 20;
    private static final String REMEDY = "write the run folder again with 'lampproof deck'";
    private static final Map<String, Figure> FIGURES =
            FigureCatalogue.figures().stream().collect(Collectors.toMap(Figure::name, Function.identity()));

    private final String file;
    private final List<Finding> findings = new ArrayList<>();

    private PredictionTable(String file) {
        this.file = file;
    }

    /** The predictions as text. */
    public static String text(List<Prediction> predictions) {
        return SheetText.of(
                HEADER, predictions.stream().map(PredictionTable::cells).toList());
    }

    /**
     * Writes the predictions to a file of their own.
     *
     * @throws UserFault when it cannot be written, or a file of that name is no table of predictions
     */
    public static void write(Path path, List<Prediction> predictions) {
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS) && !content(path).startsWith(String.join(",", HEADER))) {
            throw UserFault.badInput(Finding.of(
                    "the file is there already and is no table of predictions", path.toString(), "name another file"));
        }
        WholeFile.write(path, text(predictions));
    }

    /**
     * Reads a table that lampproof wrote, or that someone changed since.
     *
     * @throws UserFault with every finding, each with its line and cell
     */
    public static List<Prediction> read(Path path) {
        PredictionTable table = new PredictionTable(path.toString());
        List<Prediction> predictions = table.predictions(content(path));
        if (!table.findings.isEmpty()) {
            throw UserFault.badInput(table.findings);
        }
        return predictions;
    }

    private static List<String> cells(Prediction prediction) {
        return List.of(
                prediction.figure().name(),
                prediction.corner().word(),
                prediction.deck().map(DeckKind::word).orElse(""),
                Double.toString(prediction.value()),
                prediction.figure().unit(),
                Double.toString(prediction.tolerance().relative()),
                Double.toString(prediction.tolerance().absolute()),
                prediction.figure().source());
    }

    private static String content(Path path) {
        try {
            if (Files.size(path) > LIMIT) {
                throw fault("the file is larger than 1 MiB", path);
            }
            return Files.readString(path);
        } catch (NoSuchFileException e) {
            throw fault("there is no such file", path);
        } catch (MalformedInputException e) {
            throw fault("this is not UTF-8 text", path);
        } catch (IOException e) {
            throw fault("the file cannot be read", path);
        }
    }

    private static UserFault fault(String what, Path path) {
        return UserFault.badInput(Finding.of(what, path.toString(), REMEDY));
    }

    private List<Prediction> predictions(String text) {
        try (CSVParser parser = CSVParser.parse(text, CSVFormat.DEFAULT)) {
            List<CSVRecord> records = parser.getRecords();
            if (records.isEmpty() || !records.get(0).toList().equals(HEADER)) {
                throw UserFault.badInput(
                        new Finding("this is no table of predictions", file, "", String.join(",", HEADER), REMEDY));
            }
            return records.stream().skip(1).flatMap(row -> row(row).stream()).toList();
        } catch (IOException | UncheckedIOException e) {
            throw UserFault.badInput(Finding.of("the quotes of the table do not match", file, REMEDY));
        }
    }

    private List<Prediction> row(CSVRecord row) {
        if (row.size() != HEADER.size()) {
            add(row, "a row has " + HEADER.size() + " cells", String.valueOf(row.size()), "");
            return List.of();
        }
        int before = findings.size();
        Optional<Figure> figure = figure(row);
        Optional<Corner> corner = keyword(row, 1, Corner.class);
        Optional<DeckKind> deck = row.get(2).isEmpty() ? Optional.empty() : keyword(row, 2, DeckKind.class);
        double value = number(row, 3, Double.NEGATIVE_INFINITY);
        Tolerance tolerance = new Tolerance(number(row, 5, 0), number(row, 6, 0));
        return findings.size() > before
                ? List.of()
                : List.of(new Prediction(figure.orElseThrow(), corner.orElseThrow(), deck, value, tolerance));
    }

    private Optional<Figure> figure(CSVRecord row) {
        Optional<Figure> figure = Optional.ofNullable(FIGURES.get(row.get(0)));
        figure.filter(known -> !known.unit().equals(row.get(4)))
                .ifPresent(known -> add(row, known.name() + " is in " + known.unit(), row.get(4), ""));
        if (figure.isEmpty()) {
            String next = Nearest.question(row.get(0), FIGURES.keySet(), "list the figures with 'lampproof figures'");
            add(row, "this figure is not known", row.get(0), next);
        }
        return figure;
    }

    private <E extends Enum<E> & Keyword> Optional<E> keyword(CSVRecord row, int column, Class<E> type) {
        Optional<E> known = Keyword.of(type, row.get(column));
        if (known.isEmpty()) {
            String allowed = String.join(", ", Keyword.words(type));
            findings.add(new Finding(
                    "this " + HEADER.get(column) + " is not known", place(row), row.get(column), allowed, ""));
        }
        return known;
    }

    private double number(CSVRecord row, int column, double least) {
        try {
            double value = Double.parseDouble(row.get(column));
            if (Double.isFinite(value) && value >= least) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, like a number that is not finite
        }
        String wanted = least == 0 ? " is a finite number from 0" : " is a finite number";
        add(row, HEADER.get(column) + wanted, row.get(column), "");
        return Double.NaN;
    }

    private void add(CSVRecord row, String what, String found, String next) {
        findings.add(new Finding(what, place(row), found, "", next));
    }

    private String place(CSVRecord row) {
        return file + ", row " + row.getRecordNumber();
    }
}
