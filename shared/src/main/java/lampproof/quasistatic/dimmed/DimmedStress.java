package lampproof.quasistatic.dimmed;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A lamp over one line half cycle behind a dimmer, or over several that take turns.
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

    /** Half cycles together: means, rms values, and what is greatest or least in any. */
    static DimmedStress together(List<DimmedStress> all) {
        return new DimmedStress(
                mean(all, DimmedStress::linePower),
                rms(all, DimmedStress::lineCurrent),
                rms(all, DimmedStress::lampVoltage),
                most(all, DimmedStress::peakLineCurrent),
                most(all, DimmedStress::peakTriacCurrent),
                -most(all, stress -> -stress.leastTriacCurrent()),
                mean(all, DimmedStress::bleederLoss),
                most(all, DimmedStress::busPeak),
                mean(all, DimmedStress::stringCurrent),
                mean(all, DimmedStress::stringPower));
    }

    private static double mean(List<DimmedStress> all, ToDoubleFunction<DimmedStress> value) {
        return all.stream().mapToDouble(value).average().orElseThrow();
    }

    private static double rms(List<DimmedStress> all, ToDoubleFunction<DimmedStress> value) {
        return Math.sqrt(mean(all, stress -> Math.pow(value.applyAsDouble(stress), 2)));
    }

    private static double most(List<DimmedStress> all, ToDoubleFunction<DimmedStress> value) {
        return all.stream().mapToDouble(value).max().orElseThrow();
    }
}
