package lampproof.choice;

import static java.util.stream.Collectors.groupingBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;
import lampproof.fault.UserFault;
import lampproof.file.CsvReader;
import lampproof.file.CsvReader.Row;

/**
 * The classes of every part: {@code part,rating,unit,package,length,width,cost}, lengths in millimetre.
 *
 * <p>The shipped sizes are generic and the cost points invented; a user's table replaces all classes of the parts that it
 * names.
 */
public final class PartTable {

    private static final List<String> HEADER = List.of("part", "rating", "unit", "package", "length", "width", "cost");
    private static final CsvReader READER =
            new CsvReader("table of part classes", HEADER, "check that it is a table of part classes in UTF-8 text");
    private static final String SHIPPED = "parts.csv";
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
        return with(READER.text(file), file.toString());
    }

    private PartTable with(String text, String file) {
        List<Finding> findings = new ArrayList<>();
        List<PartClass> read = new ArrayList<>();
        Map<String, String> newUnits = new LinkedHashMap<>(units);
        READER.rows(text, file, findings, row -> {
            checkUnit(row, findings);
            newUnits.putIfAbsent(row.cell(0), row.cell(2));
            read.add(partClass(row, findings));
        });
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

    /** A part is rated in the unit that it had before; the first table may name any. */
    private void checkUnit(Row row, List<Finding> findings) {
        String part = row.cell(0);
        String unit = units.getOrDefault(part, row.cell(2));
        if (!units.isEmpty() && !units.containsKey(part)) {
            String known = String.join(", ", units.keySet());
            findings.add(new Finding(
                    "this part is not known", row.place(), part, known, NearestName.question(part, units.keySet())));
        } else if (!unit.equals(row.cell(2))) {
            findings.add(new Finding("the " + part + " is rated in " + unit, row.place(), row.cell(2), unit, ""));
        }
    }

    private static PartClass partClass(Row row, List<Finding> findings) {
        double[] numbers = new double[7];
        for (int column : new int[] {1, 4, 5, 6}) {
            numbers[column] = number(row.cell(column));
            if (!(numbers[column] > 0 && numbers[column] <= GREATEST)) {
                findings.add(new Finding(
                        "the " + HEADER.get(column) + " is a number above 0", row.place(), row.cell(column), "", ""));
            }
        }
        return new PartClass(row.cell(0), numbers[1], row.cell(3), numbers[4] * numbers[5] * 1e-6, numbers[6]);
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
    BillItem item(String part, double stress) {
        List<PartClass> known = classes.get(part);
        PartClass largest = known.get(known.size() - 1);
        PartClass chosen =
                known.stream().filter(one -> one.rating() >= stress).findFirst().orElse(largest);
        int count = (int) Math.max(1, Math.min(1000, Math.ceil(stress / largest.rating())));
        return new BillItem(part, chosen.housing(), count, count * chosen.area(), count * chosen.cost());
    }
}
