package lampproof.design;

/**
 * The capacitor across the string.
 *
 * @param capacitance capacitance at the working voltage [F]
 */
public record Output(double capacitance) {}
