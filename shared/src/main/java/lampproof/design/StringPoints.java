package lampproof.design;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.physics.DiodeModel;
import lampproof.physics.KneeLine;
import lampproof.physics.LedCurve;
import lampproof.spec.Amount;
import lampproof.spec.Origin;
import lampproof.spec.Spec;
import lampproof.spec.SpecRow;
import lampproof.unit.Dimension;
import lampproof.unit.QuantityWriter;

/**
 * Voltage and dynamic resistance of a string of which two or three points are known.
 *
 * <p>Two points make a line. Three make the curve of diodes with series resistance, and the string is its tangent at the
 * string current; where no such curve passes through all three, the line of least squares.
 */
public final class StringPoints {

    private static final List<String> NAMES = List.of("low", "mid", "high");
    private static final List<String> ENDS = List.of("low", "high");
    private static final String TEMPERATURE = "string.point_temperature";
    private static final String SLOPE = "string.temperature_slope";
    private static final double REACH = 2;

    private final Spec spec;
    private final List<DiodeModel.Point> points;
    private final double current;

    private StringPoints(Spec spec) {
        this.spec = spec;
        points = points();
        current = typical("string.current");
    }

    /**
     * The spec with string voltage and resistance filled in, where it gives points of the string.
     *
     * @throws UserFault when the points are not whole, do not rise, leave out the string current, or are given beside a
     *     voltage or resistance
     */
    public static Spec fitted(Spec spec) {
        boolean none = Stream.concat(NAMES.stream().flatMap(StringPoints::rows), Stream.of(TEMPERATURE))
                .noneMatch(spec.names()::contains);
        return none ? spec : new StringPoints(spec).filledIn();
    }

    private Spec filledIn() {
        refuseContradiction();
        refuseFall();
        refuseFarCurrent();
        KneeLine line = line();
        if (line.knee() <= 0) {
            throw fault("the line through these points has no knee", "check their currents and units");
        }
        List<SpecRow> rows = new ArrayList<>(spec.rows());
        rows.removeIf(row -> isFitted(row.name()));
        rows.add(filledIn("string.voltage", line.voltage(current) + shift()));
        rows.add(filledIn("string.resistance", line.resistance()));
        return Spec.of(rows);
    }

    private List<DiodeModel.Point> points() {
        List<String> needed = NAMES.stream()
                .filter(name -> ENDS.contains(name) || rows(name).anyMatch(spec.names()::contains))
                .toList();
        List<Finding> missing = needed.stream()
                .flatMap(StringPoints::rows)
                .filter(row -> !spec.names().contains(row))
                .map(row -> Finding.of(
                        row + " is missing", row, "give voltage and current of two points of the string, or of three"))
                .toList();
        if (!missing.isEmpty()) {
            throw UserFault.badInput(missing);
        }
        return needed.stream()
                .map(name -> new DiodeModel.Point(typical("string.voltage_" + name), typical("string.current_" + name)))
                .toList();
    }

    private KneeLine line() {
        if (isCurve()) {
            LedCurve curve = LedCurve.through(points);
            double resistance = curve.dynamicResistance(current);
            return new KneeLine(curve.voltage(current) - resistance * current, resistance);
        }
        return KneeLine.through(points);
    }

    private boolean isCurve() {
        return points.size() == NAMES.size() && LedCurve.through(points).isDiode();
    }

    private String rule() {
        if (isCurve()) {
            return "diodes with series resistance through three points, their tangent at the string current";
        }
        return points.size() == NAMES.size()
                ? "line of least squares through three points: no curve of diodes passes through all"
                : "line through two points";
    }

    private SpecRow filledIn(String name, double value) {
        return SpecRow.filledIn(name, Amount.of(value), rule());
    }

    /** What the string voltage changes by from the temperature of the points to 25 degC [V]. */
    private double shift() {
        double temperature = spec.amount(TEMPERATURE).map(Amount::typical).orElse(Light.RATED_TEMPERATURE);
        if (temperature != Light.RATED_TEMPERATURE && !spec.names().contains(SLOPE)) {
            throw UserFault.badInput(Finding.of(
                    "string voltage at 25 degC needs its slope", TEMPERATURE, "give " + SLOPE + ", such as -0.3 V/K"));
        }
        return temperature == Light.RATED_TEMPERATURE ? 0 : typical(SLOPE) * (Light.RATED_TEMPERATURE - temperature);
    }

    private void refuseContradiction() {
        String both = spec.rows().stream()
                .filter(row -> row.origin() == Origin.GIVEN && isFitted(row.name()))
                .map(SpecRow::name)
                .collect(Collectors.joining(", "));
        if (!both.isEmpty()) {
            throw fault("the string has points and also " + both, "keep the points, or " + both);
        }
    }

    private void refuseFall() {
        for (int index = 1; index < points.size(); index++) {
            DiodeModel.Point low = points.get(index - 1);
            DiodeModel.Point high = points.get(index);
            if (high.current() <= low.current() || high.voltage() <= low.voltage()) {
                throw fault("voltage and current of the string must rise from point to point", "sort them by current");
            }
        }
    }

    private void refuseFarCurrent() {
        double least = points.get(0).current() / REACH;
        double most = points.get(points.size() - 1).current() * REACH;
        if (current < least || current > most) {
            throw UserFault.badInput(new Finding(
                    "the points of the string lie far from its current",
                    "string.current",
                    QuantityWriter.text(Dimension.CURRENT, current),
                    QuantityWriter.text(Dimension.CURRENT, least) + " to "
                            + QuantityWriter.text(Dimension.CURRENT, most) + ", twice as far as the points reach",
                    "give points around the string current"));
        }
    }

    private UserFault fault(String what, String next) {
        String where = NAMES.stream()
                .flatMap(StringPoints::rows)
                .filter(spec.names()::contains)
                .collect(Collectors.joining(", "));
        return UserFault.badInput(Finding.of(what, where, next));
    }

    private double typical(String name) {
        return spec.amount(name).orElseThrow().typical();
    }

    private static boolean isFitted(String name) {
        return name.equals("string.voltage") || name.equals("string.resistance");
    }

    private static Stream<String> rows(String point) {
        return Stream.of("string.voltage_" + point, "string.current_" + point);
    }
}
