package lampproof.choice;

import static java.util.stream.Collectors.groupingBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.spec.Nearest;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The classes of every part: {@code part,rating,unit,package,length,width,cost}, lengths in millimetre.
 *
 * <p>The shipped sizes are generic and the cost points invented; a user's table replaces all classes of the parts that it
 * names.
 */
public final class PartTable {

    private static final List<String> HEADER = List.of("part", "rating", "unit", "package", "length", "width", "cost");
    private static final String SHIPPED = "parts.csv";
    private static final long LIMIT = 1 << 20;
    private static final double GREATEST = 1e6;

    private final Map<String, List<PartClass>> classes;
    private final Map<String, String> units;

    private PartTable(Map<String, List<PartClass>> classes, Map<String, String> units) {
        this.classes = classes;
        this.units = units;
    }

    /** The table that ships with lampproof. */
    public static PartTable shipped() {
        try (InputStream table = Objects.requireNonNull(PartTable.class.getResourceAsStream(SHIPPED))) {
            String text = new String(table.readAllBytes(), StandardCharsets.UTF_8);
            return new PartTable(Map.of(), Map.of()).with(text, SHIPPED);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * This table with the classes of a user's table in place of its own.
     *
     * @throws UserFault with every finding, each with its row
     */
    public PartTable with(Path file) {
        try {
            if (Files.size(file) > LIMIT) {
                throw UserFault.badInput(Finding.of("the file is larger than 1 MiB", file.toString(), "name another"));
            }
            return with(Files.readString(file), file.toString());
        } catch (IOException e) {
            throw UserFault.badInput(Finding.of(
                    "the table of parts cannot be read", file.toString(), "check that it is there and UTF-8 text"));
        }
    }

    private PartTable with(String text, String file) {
        List<Finding> findings = new ArrayList<>();
        List<PartClass> read = new ArrayList<>();
        Map<String, String> newUnits = new LinkedHashMap<>(units);
        for (CSVRecord row : rows(text, file)) {
            String place = file + ", row " + row.getRecordNumber();
            if (row.size() != HEADER.size()) {
                findings.add(new Finding("a row has " + HEADER.size() + " cells", place, "" + row.size(), "", ""));
                continue;
            }
            String unit = units.isEmpty() ? row.get(2) : knownUnit(row.get(0), place, findings);
            if (unit != null && !unit.equals(row.get(2))) {
                findings.add(new Finding("the " + row.get(0) + " is rated in " + unit, place, row.get(2), unit, ""));
            }
            newUnits.putIfAbsent(row.get(0), row.get(2));
            read.add(partClass(row, place, findings));
        }
        if (!findings.isEmpty()) {
            throw UserFault.badInput(findings);
        }
        Map<String, List<PartClass>> all = new LinkedHashMap<>(classes);
        read.stream()
                .sorted(Comparator.comparingDouble(PartClass::rating))
                .collect(groupingBy(PartClass::part))
                .forEach(all::put);
        return new PartTable(all, newUnits);
    }

    private static List<CSVRecord> rows(String text, String file) {
        try (CSVParser parser = CSVParser.parse(
                text,
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setTrim(true)
                        .setIgnoreEmptyLines(true)
                        .get())) {
            List<CSVRecord> rows = parser.getRecords();
            if (rows.isEmpty() || !rows.get(0).toList().equals(HEADER)) {
                throw UserFault.badInput(
                        new Finding("this is no table of part classes", file, "", String.join(",", HEADER), ""));
            }
            return rows.subList(1, rows.size());
        } catch (IOException | UncheckedIOException e) {
            throw UserFault.badInput(Finding.of("the quotes of the table do not match", file, "close every quote"));
        }
    }

    private String knownUnit(String part, String place, List<Finding> findings) {
        if (!units.containsKey(part)) {
            String next = Nearest.question(part, units.keySet());
            findings.add(new Finding("this part is not known", place, part, String.join(", ", units.keySet()), next));
        }
        return units.get(part);
    }

    private static PartClass partClass(CSVRecord row, String place, List<Finding> findings) {
        double[] numbers = new double[7];
        for (int column : new int[] {1, 4, 5, 6}) {
            numbers[column] = number(row.get(column));
            if (!(numbers[column] > 0 && numbers[column] <= GREATEST)) {
                findings.add(new Finding(
                        "the " + HEADER.get(column) + " is a number above 0", place, row.get(column), "", ""));
            }
        }
        return new PartClass(row.get(0), numbers[1], row.get(3), numbers[4] * numbers[5] * 1e-6, numbers[6]);
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /**
     * The smallest class that takes a stress, or as many of the largest class as do.
     *
     * @param stress the stress [unit of the part]
     */
    Bill.Item item(String part, double stress) {
        List<PartClass> known = classes.get(part);
        PartClass largest = known.get(known.size() - 1);
        PartClass chosen =
                known.stream().filter(one -> one.rating() >= stress).findFirst().orElse(largest);
        int count = (int) Math.max(1, Math.min(1000, Math.ceil(stress / largest.rating())));
        return new Bill.Item(part, chosen.housing(), count, count * chosen.area(), count * chosen.cost());
    }
}
