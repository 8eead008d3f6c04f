package lampproof.design;

/**
 * What switch and diode cost at each switching edge beyond the node capacitance.
 *
 * @param gateCharge total gate charge [C]
 * @param gateVoltage drive voltage of the gate [V]
 * @param transitionTime overlap of voltage and current in one transition [s]
 * @param recoveryCharge reverse recovery charge of the diode [C]
 * @param snubberCapacitance capacitor of an RC snubber across the switch [F]; 0 without one
 */
public record Edges(
        double gateCharge,
        double gateVoltage,
        double transitionTime,
        double recoveryCharge,
        double snubberCapacitance) {}
