package lampproof.quasistatic;

/**
 * A lamp over one line half cycle behind a dimmer, or over two that take turns.
 *
 * @param linePower mean power into the lamp [W]
 * @param lineCurrent rms current into the lamp [A]
 * @param lampVoltage rms voltage at the lamp [V]
 * @param peakLineCurrent greatest current into the lamp [A]: the spike when a leading edge fires
 * @param peakTriacCurrent greatest current of the dimmer's switch, its noise capacitor included [A]
 * @param leastTriacCurrent least magnitude of that current from the end of the gate pulse to the end of the watch [A]
 * @param bleederLoss heat of the bleeder with its two diodes [W]
 * @param busPeak greatest bus voltage [V]
 * @param stringCurrent mean string current [A]
 * @param stringPower mean string power [W]
 */
public record DimmedStress(
        double linePower,
        double lineCurrent,
        double lampVoltage,
        double peakLineCurrent,
        double peakTriacCurrent,
        double leastTriacCurrent,
        double bleederLoss,
        double busPeak,
        double stringCurrent,
        double stringPower) {

    /** This half cycle and another one together. */
    DimmedStress with(DimmedStress other) {
        return new DimmedStress(
                0.5 * (linePower + other.linePower),
                Math.hypot(lineCurrent, other.lineCurrent) / Math.sqrt(2),
                Math.hypot(lampVoltage, other.lampVoltage) / Math.sqrt(2),
                Math.max(peakLineCurrent, other.peakLineCurrent),
                Math.max(peakTriacCurrent, other.peakTriacCurrent),
                Math.min(leastTriacCurrent, other.leastTriacCurrent),
                0.5 * (bleederLoss + other.bleederLoss),
                Math.max(busPeak, other.busPeak),
                0.5 * (stringCurrent + other.stringCurrent),
                0.5 * (stringPower + other.stringPower));
    }
}
