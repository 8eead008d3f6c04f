package lampproof.prediction;

/**
 * One entry of the catalogue.
 *
 * @param name dotted name: part, electrical quantity, statistic
 * @param symbol symbol in formulas
 * @param unit unit in tables; per cent means a hundredth
 * @param grade how closely it can be predicted
 * @param definition what it is, over which window and which average
 * @param source where the formula comes from
 */
public record Figure(String name, String symbol, String unit, Grade grade, String definition, String source) {

    /** Its formula in a line, with the symbols of other figures. */
    public String formula() {
        return Formulas.of(name);
    }
}
