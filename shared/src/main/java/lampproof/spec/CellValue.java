package lampproof.spec;

import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.unit.Dimension;
import lampproof.unit.QuantityReader;

/**
 * The value of one cell of a quantity.
 *
 * @param value the value in the unit that the dimension is kept in
 * @param rating a rating that follows it, such as 400V or X7R; often empty
 */
record CellValue(double value, String rating) {

    /**
     * Reads a cell together with the unit column, and checks it against the quantity.
     *
     * @throws UserFault when the cell is not a value with a unit, or the value is out of range
     */
    static CellValue read(Quantity quantity, TableRow row, Column column, DecimalMark mark, Faults faults) {
        String where = faults.place(row.line(), column);
        CellParts cell = CellParts.of(mark.withPoint(row.cell(column), where));
        checkRating(quantity, cell, row.cell(column), where);
        String unit = onlyUnit(cell, row.cell(Column.UNIT), where);
        String unitPlace = cell.unit().isEmpty() ? faults.place(row.line(), Column.UNIT) : where;
        double value = QuantityReader.read(quantity.dimension(), cell.number(), unit, where, unitPlace);
        checkRange(quantity, value, row.cell(column), unit, where);
        return new CellValue(value, cell.rating());
    }

    private static String onlyUnit(CellParts cell, String column, String where) {
        if (!cell.unit().isEmpty() && !column.isEmpty()) {
            String next = "write only " + cell.number() + " here and keep " + column + " in the unit column";
            String found = cell.number() + " " + cell.unit();
            throw UserFault.badInput(new Finding("a unit in the cell and in the unit column", where, found, "", next));
        }
        return cell.unit() + column;
    }

    private static void checkRating(Quantity quantity, CellParts cell, String text, String where) {
        boolean known = quantity.dimension().isPartValue() && cell.hasKnownRating();
        if (!cell.rating().isEmpty() && !known) {
            String next = "keep the number, put the unit into the unit column and the rest into the note";
            throw UserFault.badInput(new Finding("more than one value in a cell", where, text, "", next));
        }
    }

    private static void checkRange(Quantity quantity, double value, String text, String unit, String where) {
        if (!quantity.holds(value)) {
            String what = quantity.name() + " is out of range";
            String allowed = quantity.allowedIn(QuantityReader.spelling(quantity.dimension(), unit));
            throw UserFault.badInput(new Finding(what, where, text, allowed, ""));
        }
        if (quantity.dimension() == Dimension.COUNT && value != Math.rint(value)) {
            throw UserFault.badInput(new Finding(quantity.name() + " must be a whole number", where, text, "", ""));
        }
    }
}
