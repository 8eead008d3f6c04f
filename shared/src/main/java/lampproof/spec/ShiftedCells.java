package lampproof.spec;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import lampproof.fault.Finding;
import lampproof.unit.Dimension;
import lampproof.unit.QuantityReader;

/**
 * Finds a decimal comma that a comma-separated table reads as a separator, so that the cells after it are shifted.
 *
 * <p>A row is shifted if its unit is to the right of the unit column, or if the row has more cells than the header. The
 * cells of the cut number are then two neighbours, both digits.
 */
final class ShiftedCells {

    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");

    private ShiftedCells() {}

    /** The finding for a row in the column order of the documentation; empty if no decimal comma shifts the row. */
    static Optional<Finding> finding(SpecHeader header, List<String> cells, String where) {
        boolean usual = header.separator() == ','
                && header.columns().indexOf(Column.UNIT) == header.columns().indexOf(Column.MIN) + 3;
        return usual
                ? dimension(header, cells)
                        .filter(dimension -> isShifted(header, cells, dimension))
                        .flatMap(dimension -> cut(header, cells, dimension))
                        .map(cut -> finding(cut, where))
                : Optional.empty();
    }

    private static Optional<Dimension> dimension(SpecHeader header, List<String> cells) {
        return cell(cells, header.columns().indexOf(Column.QUANTITY))
                .flatMap(Vocabulary::find)
                .filter(Quantity.class::isInstance)
                .map(entry -> ((Quantity) entry).dimension());
    }

    private static boolean isShifted(SpecHeader header, List<String> cells, Dimension dimension) {
        int unit = header.columns().indexOf(Column.UNIT);
        boolean unitInPlace =
                cell(cells, unit).filter(text -> isUnit(dimension, text)).isPresent();
        boolean unitFurther = cells.stream().skip(unit + 1L).anyMatch(text -> isUnit(dimension, text));
        boolean unitInNumber = cells.stream()
                .anyMatch(text -> isUnit(dimension, CellParts.of(text).unit()));
        boolean tooMany = cells.stream().skip(header.columns().size()).anyMatch(text -> !text.isEmpty());
        return !unitInPlace
                && (unitFurther
                        || tooMany
                        || (unitInNumber
                                && cell(cells, unit).filter(String::isEmpty).isPresent()));
    }

    /** The cells that contain the cut number; empty if no two neighbours can be one number. */
    private static Optional<List<String>> cut(SpecHeader header, List<String> cells, Dimension dimension) {
        int first = header.columns().indexOf(Column.MIN);
        return IntStream.range(first, cells.size() - 1)
                .filter(index -> WHOLE.matcher(cells.get(index)).matches())
                .filter(index -> isFraction(cells.get(index + 1), dimension))
                .mapToObj(index -> cells.subList(index, cells.size()).stream()
                        .takeWhile(cell -> isFraction(cell, dimension))
                        .toList())
                .findFirst();
    }

    private static boolean isFraction(String text, Dimension dimension) {
        CellParts parts = CellParts.of(text);
        return WHOLE.matcher(parts.number()).matches() && (parts.unit().isEmpty() || isUnit(dimension, parts.unit()));
    }

    private static boolean isUnit(Dimension dimension, String text) {
        return !text.isEmpty() && dimension.spellings().contains(QuantityReader.spelling(dimension, text));
    }

    private static Optional<String> cell(List<String> cells, int index) {
        return index >= 0 && index < cells.size() ? Optional.of(cells.get(index)) : Optional.empty();
    }

    private static Finding finding(List<String> cut, String where) {
        String found = String.join(",", cut);
        String write = cut.size() == 2 ? found.replace(',', '.') : "every number with a decimal point";
        String next = "write " + write + ", or separate the columns with semicolons";
        return new Finding("a decimal comma in a comma-separated table shifted the cells", where, found, "", next);
    }
}
