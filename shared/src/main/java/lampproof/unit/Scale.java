package lampproof.unit;

/**
 * One prefix and one count of decimals, with which the values of a column can be compared at a glance.
 *
 * @param prefix the prefix of the unit
 * @param unit the unit without its prefix; 1 for a plain number
 * @param decimals digits behind the point
 * @param ascii whether micro is written as u
 */
public record Scale(Prefix prefix, String unit, int decimals, boolean ascii) {

    /** The same with another count of decimals. */
    public Scale withDecimals(int count) {
        return new Scale(prefix, unit, count, ascii);
    }

    /** The unit with its prefix; empty for a plain number. */
    public String scaledUnit() {
        return unit.equals("1") ? "" : (ascii ? prefix.symbol() : prefix.sign()) + unit;
    }

    /** The number that stands for a value [the unit] before the scaled unit. */
    public String number(double value) {
        return Double.isFinite(value) ? Decimal.of(value).fixed(prefix.exponent(), decimals) : "not finite";
    }

    /** A value [the unit] with its scaled unit. */
    public String text(double value) {
        return Double.isFinite(value) ? (number(value) + " " + scaledUnit()).strip() : "not finite";
    }
}
