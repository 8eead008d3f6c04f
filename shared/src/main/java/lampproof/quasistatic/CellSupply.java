package lampproof.quasistatic;

/**
 * What a cell stands between.
 *
 * @param source E, the inductor voltage while the switch conducts, drops left out [V]
 * @param swing S, the node voltage while the diode conducts [V]
 * @param reset what takes the inductor current down while the diode conducts, resistance left out [V]
 * @param idle E while neither conducts [V]
 */
record CellSupply(double source, double swing, double reset, double idle) {

    /** A source that stands still. */
    CellSupply(double source, double swing) {
        this(source, swing, swing - source, source);
    }
}
