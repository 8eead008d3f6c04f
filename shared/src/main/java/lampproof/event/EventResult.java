package lampproof.event;

/**
 * Greatest magnitudes from the first to the last instant of an event.
 *
 * @param instant when it happens [s]
 * @param stop when it has shown what it has to show [s]
 * @param lineCurrent current into the lamp [A]
 * @param busVoltage bus [V]
 * @param nodeVoltage switch node [V]
 * @param inductorCurrent inductor [A]
 * @param switchCurrent switch while it conducts [A]
 * @param outputVoltage output capacitor [V]
 * @param reverseVoltage diode, reverse [V]
 * @param stringCurrent string [A]
 * @param startTime when the string first carries half its mean current; the end where it never does [s]
 */
public record EventResult(
        double instant,
        double stop,
        double lineCurrent,
        double busVoltage,
        double nodeVoltage,
        double inductorCurrent,
        double switchCurrent,
        double outputVoltage,
        double reverseVoltage,
        double stringCurrent,
        double startTime) {}
