package lampproof.quasistatic;

import java.util.List;
import lampproof.design.Driver;
import lampproof.design.Topology;

/**
 * What the string and the output capacitor see.
 *
 * @param meanCurrent mean string current [A]
 * @param peakCurrent greatest string current, switching ripple included [A]
 * @param lineRipple peak-to-peak string current, averaged over switching cycles [A]
 * @param switchingRipple greatest swing of the string current within a switching cycle [A]
 * @param power mean string power [W]
 * @param percentFlicker greatest less least over their sum, of the current averaged over switching cycles [-]
 * @param flickerIndex area above the mean over the whole area [-]
 * @param peakVoltage greatest output voltage, switching ripple included [V]
 * @param capacitorRms rms current of the output capacitor [A]
 */
public record StringStress(
        double meanCurrent,
        double peakCurrent,
        double lineRipple,
        double switchingRipple,
        double power,
        double percentFlicker,
        double flickerIndex,
        double peakVoltage,
        double capacitorRms) {

    static StringStress over(List<AnglePoint> points, Driver driver) {
        double n = points.size();
        double mean = points.stream().mapToDouble(AnglePoint::stringCurrent).sum() / n;
        double power = 0;
        double above = 0;
        double greatest = 0;
        double least = Double.MAX_VALUE;
        double peakCurrent = 0;
        double peakVoltage = 0;
        double ripple = 0;
        double capacitorSquare = 0;
        for (AnglePoint point : points) {
            double current = point.stringCurrent();
            double swing = voltageRipple(point, driver);
            power += point.outputVoltage() * current / n;
            above += Math.max(0, current - mean) / n;
            greatest = Math.max(greatest, current);
            least = Math.min(least, current);
            peakVoltage = Math.max(peakVoltage, point.outputVoltage() + 0.5 * swing);
            peakCurrent = Math.max(
                    peakCurrent, current + 0.5 * swing / driver.string().resistance());
            ripple = Math.max(ripple, swing / driver.string().resistance());
            capacitorSquare += capacitorSquare(point, driver) / n;
        }
        return new StringStress(
                mean,
                peakCurrent,
                greatest - least,
                ripple,
                power,
                (greatest - least) / (greatest + least),
                above / mean,
                peakVoltage,
                Math.sqrt(capacitorSquare));
    }

    /** Swing of the output voltage within a switching cycle, less its drift over the cycle [V]. */
    private static double voltageRipple(AnglePoint point, Driver driver) {
        CellCycle cycle = point.cycle();
        if (cycle == null) {
            return 0;
        }
        double capacitance = driver.output().capacitanceAt(point.outputVoltage());
        return driver.topology() == Topology.STEP_UP
                ? chargeAbove(cycle.diode(), point.outputCurrent()) / capacitance
                : Converter.triangleAbove(cycle, point.outputCurrent()) / capacitance;
    }

    /** Charge of a falling ramp above a current that it passes or stays above [C]. */
    static double chargeAbove(Ramp ramp, double current) {
        double top = ramp.from() - current;
        double bottom = ramp.to() - current;
        if (!(top > 0)) {
            return 0;
        }
        return bottom >= 0 ? 0.5 * (top + bottom) * ramp.time() : 0.5 * top * top / (top - bottom) * ramp.time();
    }

    /** Mean square of what the converter gives and the string does not take [A^2]. */
    private static double capacitorSquare(AnglePoint point, Driver driver) {
        CellCycle cycle = point.cycle();
        double string = point.stringCurrent();
        if (cycle == null) {
            return string * string;
        }
        double given = driver.topology() == Topology.STEP_UP ? cycle.diodeSquare() : cycle.inductorSquare();
        return Math.max(0, given / cycle.period() - 2 * string * point.outputCurrent() + string * string);
    }
}
