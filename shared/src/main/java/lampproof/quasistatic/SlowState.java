package lampproof.quasistatic;

/**
 * The slow states between one half cycle and the next.
 *
 * @param busVoltage bus voltage [V]
 * @param outputVoltage output voltage [V]
 * @param inputCurrent current into the converter [A]
 * @param outputCurrent current out of the converter [A]
 * @param inductorCurrent inductor current at turn-on [A]
 */
public record SlowState(
        double busVoltage, double outputVoltage, double inputCurrent, double outputCurrent, double inductorCurrent) {

    /** The same state with another output voltage [V]. */
    public SlowState withOutputVoltage(double voltage) {
        return new SlowState(busVoltage, voltage, inputCurrent, outputCurrent, inductorCurrent);
    }
}
