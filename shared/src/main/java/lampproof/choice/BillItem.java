package lampproof.choice;

/**
 * An item of a bill of materials: so many parts of one class.
 *
 * @param part what they are for
 * @param housing their package
 * @param count how many
 * @param area board that they cover together [m2]
 * @param cost cost points of all of them [-]
 */
public record BillItem(String part, String housing, int count, double area, double cost) {}
