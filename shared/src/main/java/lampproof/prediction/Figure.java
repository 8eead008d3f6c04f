package lampproof.prediction;

/**
 * One entry of the catalogue.
 *
 * <p>In a formula, angle brackets are the mean over the window; E and S are source and diode voltage of the switching cell, T
 * its period, and a and b the ends of a straight piece of current of length t.
 *
 * @param name dotted name: part, electrical quantity, statistic
 * @param symbol symbol in formulas
 * @param unit unit in tables; per cent means a hundredth
 * @param grade how closely it can be predicted
 * @param definition what it is, over which window and which average
 * @param formula its formula in a line, with the symbols of other figures
 * @param source where the formula comes from
 */
public record Figure(
        String name, String symbol, String unit, Grade grade, String definition, String formula, String source) {}
