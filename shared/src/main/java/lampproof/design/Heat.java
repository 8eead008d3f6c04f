package lampproof.design;

/**
 * Where the heat of a driver goes, and what it does to string and output capacitor.
 *
 * @param housing the housing and its parts
 * @param light what the string does besides taking power
 * @param capacitorLife life of the output capacitor
 */
public record Heat(Housing housing, Light light, LifePoints capacitorLife) {}
