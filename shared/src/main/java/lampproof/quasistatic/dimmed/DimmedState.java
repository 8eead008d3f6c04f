package lampproof.quasistatic.dimmed;

import lampproof.quasistatic.SlowState;

/**
 * The states behind a dimmer at the zero crossing of the line, signed as in the half cycle that follows.
 *
 * @param chokeCurrent current in the choke of the dimmer [A]
 * @param lampVoltage voltage at the terminals of the lamp [V]
 * @param filterCurrent current in the choke of the filter [A]
 * @param filteredVoltage voltage behind the filter [V]
 * @param sensedCurrent current that the bleeder takes for the lamp's own [A]
 * @param slow bus, output and inductor
 */
public record DimmedState(
        double chokeCurrent,
        double lampVoltage,
        double filterCurrent,
        double filteredVoltage,
        double sensedCurrent,
        SlowState slow) {

    /** A lamp whose dimmer begins with nothing in it. */
    public static DimmedState of(SlowState slow) {
        return new DimmedState(0, 0, 0, 0, 0, slow);
    }

    /** The same state with another output voltage [V]. */
    public DimmedState withOutputVoltage(double voltage) {
        return new DimmedState(
                chokeCurrent,
                lampVoltage,
                filterCurrent,
                filteredVoltage,
                sensedCurrent,
                slow.withOutputVoltage(voltage));
    }
}
