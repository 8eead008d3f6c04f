package lampproof.quasistatic;

/**
 * The voltages between which a cell works.
 *
 * @param source E, the inductor voltage while the switch conducts, drops left out [V]
 * @param sourceDroop how far it falls meanwhile [V]
 * @param swing S, the node voltage while the diode conducts [V]
 * @param reset what takes the inductor current down while the diode conducts, resistance left out [V]
 * @param resetGrowth how far it grows meanwhile [V]
 * @param ring amplitude with which the node rings about E once the diode has conducted [V]
 * @param idle E at the end of the ring [V]
 */
record CellSupply(
        double source, double sourceDroop, double swing, double reset, double resetGrowth, double ring, double idle) {

    /** A source without ripple. */
    CellSupply(double source, double swing) {
        this(source, 0, swing, swing - source, 0, swing - source, source);
    }
}
