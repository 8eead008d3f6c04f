package lampproof.quasistatic;

import java.util.List;
import lampproof.design.Driver;
import lampproof.design.Topology;
import lampproof.quasistatic.StringRipple.Piece;

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
        double resistance = driver.string().resistance();
        double mean = points.stream().mapToDouble(AnglePoint::stringCurrent).sum() / n;
        double power = 0;
        double above = 0;
        double greatest = 0;
        double least = Double.MAX_VALUE;
        double peakCurrent = 0;
        double peakVoltage = 0;
        double swing = 0;
        double capacitorSquare = 0;
        for (AnglePoint point : points) {
            double current = point.stringCurrent();
            StringRipple ripple = ripple(point, driver);
            power += (point.outputVoltage() * current + resistance * ripple.meanSquare()) / n;
            above += Math.max(0, current - mean) / n;
            greatest = Math.max(greatest, current);
            least = Math.min(least, current);
            peakVoltage = Math.max(peakVoltage, point.outputVoltage() + resistance * ripple.above());
            peakCurrent = Math.max(peakCurrent, Math.min(current + ripple.above(), most(point)));
            swing = Math.max(swing, ripple.swing());
            capacitorSquare += capacitorSquare(point, driver, ripple) / n;
        }
        return new StringStress(
                mean,
                peakCurrent,
                greatest - least,
                swing,
                power,
                (greatest - least) / (greatest + least),
                above / mean,
                peakVoltage,
                Math.sqrt(capacitorSquare));
    }

    /** Ripple lifts the string current no higher than what the converter gives at its peak [A]. */
    private static double most(AnglePoint point) {
        return point.cycle() == null
                ? point.stringCurrent()
                : Math.max(point.stringCurrent(), point.cycle().topCurrent());
    }

    private static StringRipple ripple(AnglePoint point, Driver driver) {
        CellCycle cycle = point.cycle();
        if (cycle == null) {
            return StringRipple.NONE;
        }
        double capacitance = driver.output().capacitanceAt(point.outputVoltage());
        return StringRipple.of(
                driver.topology() == Topology.STEP_UP ? diodeCurrent(cycle) : inductorCurrent(cycle),
                driver.string().resistance() * capacitance);
    }

    private static List<Piece> diodeCurrent(CellCycle cycle) {
        return List.of(
                new Piece(0, 0, cycle.onTime() + cycle.rise().time()),
                piece(cycle.diode().from(), cycle.diode().to(), cycle.diode().time()),
                new Piece(0, 0, cycle.ring().time()));
    }

    /** The string takes none of the current that rings back. */
    private static List<Piece> inductorCurrent(CellCycle cycle) {
        return List.of(
                piece(cycle.startCurrent(), cycle.peakCurrent(), cycle.onTime()),
                piece(cycle.peakCurrent(), cycle.diode().from(), cycle.rise().time()),
                piece(cycle.diode().from(), cycle.diode().to(), cycle.diode().time()),
                new Piece(0, 0, cycle.ring().time()));
    }

    private static Piece piece(double from, double to, double time) {
        return new Piece(Math.max(0, from), Math.max(0, to), time);
    }

    /** Mean square of what the converter gives and the string does not take [A^2]. */
    private static double capacitorSquare(AnglePoint point, Driver driver, StringRipple ripple) {
        CellCycle cycle = point.cycle();
        double string = point.stringCurrent();
        if (cycle == null) {
            return string * string;
        }
        double given = driver.topology() == Topology.STEP_UP ? cycle.diodeSquare() : cycle.inductorSquare();
        double steady = given / cycle.period() - 2 * string * point.outputCurrent() + string * string;
        return Math.max(0, steady - ripple.meanSquare());
    }
}
