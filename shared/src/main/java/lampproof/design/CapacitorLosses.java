package lampproof.design;

/**
 * What makes the capacitors of a driver warm. The decks do not contain it.
 *
 * @param outputResistance series resistance of the output capacitor [Ohm]
 * @param filterDissipation tangent of the loss angle of the filter capacitor at the line frequency [-]
 * @param busResistance series resistance of the bus capacitor [Ohm]
 */
public record CapacitorLosses(double outputResistance, double filterDissipation, double busResistance) {}
