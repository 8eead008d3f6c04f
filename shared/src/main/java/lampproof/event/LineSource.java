package lampproof.event;

/** The source at the terminals of the lamp: a voltage behind a resistance, both seen from the terminals of the lamp. */
interface LineSource {

    /** Voltage without load [V]. */
    double voltage();

    /** Resistance behind the terminals [Ohm]. */
    double resistance();

    /**
     * Goes on in time.
     *
     * @param step length of the step [s]
     * @param current current into the lamp during it [A]
     */
    void advance(double step, double current);
}
