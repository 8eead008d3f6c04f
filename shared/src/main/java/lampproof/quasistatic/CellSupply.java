package lampproof.quasistatic;

/**
 * What a cell stands between.
 *
 * @param source E, the inductor voltage while the switch conducts, drops left out [V]
 * @param swing S, the node voltage while the diode conducts [V]
 */
record CellSupply(double source, double swing) {}
