package lampproof.choice;

/**
 * A class in which a part is sold: a generic package with an invented cost.
 *
 * @param part what it is for
 * @param rating the stress that it takes [unit of the part]
 * @param housing name of the package
 * @param area board that it covers [m2]
 * @param cost cost points [-]
 */
public record PartClass(String part, double rating, String housing, double area, double cost) {}
