package lampproof.endtoend;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import lampproof.measure.Window;

/**
 * A table read cell by cell and measured by another algorithm: Simpson's rule over each stretch between two rows, which is
 * exact for products of straight lines, its values interpolated and added up as decimals.
 */
final class Rows {

    private final List<String> names;
    private final List<double[]> rows = new ArrayList<>();

    Rows(Path table) throws IOException {
        List<String> lines = Files.readAllLines(table);
        names = List.of(lines.get(0).strip().split("\\s+"));
        for (String line : lines.subList(1, lines.size())) {
            rows.add(Arrays.stream(line.strip().split("\\s+"))
                    .mapToDouble(Double::parseDouble)
                    .toArray());
        }
    }

    Map<String, Double> figures(Window window) {
        double from = window.start();
        double to = window.end();
        return Map.of(
                "rms", Math.sqrt(mean("inductor_current", "inductor_current", from, to, (a, b) -> a * b)),
                "mean", mean("string_current", "string_current", from, to, (a, b) -> a),
                "power", mean("line_voltage", "line_current", from, to, (a, b) -> a * b),
                "peak", peak("inductor_current", from, to));
    }

    private double mean(String one, String other, double from, double to, DoubleBinaryOperator join) {
        int a = names.indexOf(one);
        int b = names.indexOf(other);
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 1; i < rows.size(); i++) {
            double[] left = rows.get(i - 1);
            double[] right = rows.get(i);
            double start = Math.max(from, left[0]);
            double end = Math.min(to, right[0]);
            if (end > start) {
                double middle = start + (end - start) / 2;
                double first = join.applyAsDouble(at(left, right, start, a), at(left, right, start, b));
                double centre = join.applyAsDouble(at(left, right, middle, a), at(left, right, middle, b));
                double last = join.applyAsDouble(at(left, right, end, a), at(left, right, end, b));
                sum = sum.add(new BigDecimal((end - start) * (first + 4 * centre + last) / 6));
            }
        }
        return sum.doubleValue() / (to - from);
    }

    private double peak(String name, double from, double to) {
        int column = names.indexOf(name);
        double inside = rows.stream()
                .filter(row -> row[0] >= from && row[0] <= to)
                .mapToDouble(row -> row[column])
                .max()
                .orElseThrow();
        return Math.max(inside, Math.max(at(from, column), at(to, column)));
    }

    private double at(double time, int column) {
        int next = 1;
        while (rows.get(next)[0] < time) {
            next++;
        }
        return at(rows.get(next - 1), rows.get(next), time, column);
    }

    private static double at(double[] left, double[] right, double time, int column) {
        double share = (time - left[0]) / (right[0] - left[0]);
        return left[column] + share * (right[column] - left[column]);
    }
}
