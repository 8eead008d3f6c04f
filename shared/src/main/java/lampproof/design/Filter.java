package lampproof.design;

/**
 * Differential-mode filter between the mains and the bridge.
 *
 * @param fuseResistance fusible resistor in the line [Ohm]
 * @param inductance filter inductor [H]
 * @param resistance its winding [Ohm]
 * @param damping resistor across the inductor and its winding [Ohm]
 * @param capacitance capacitor across the bridge input [F]
 */
public record Filter(double fuseResistance, double inductance, double resistance, double damping, double capacitance) {

    /** Magnitude of the admittance of inductor and damping side by side at an angular frequency [rad/s]; in [S]. */
    public double admittance(double omega) {
        double conductance = 1 / damping;
        double susceptance = 1 / (omega * inductance);
        return Math.sqrt(conductance * conductance + susceptance * susceptance);
    }

    /** Resistance that the line-frequency current meets [Ohm]: fuse in series with winding across damping. */
    public double seriesResistance() {
        return resistance == 0 ? fuseResistance : fuseResistance + resistance * damping / (resistance + damping);
    }
}
