package lampproof.quasistatic;

import java.util.List;
import lampproof.design.Driver;
import lampproof.physics.HarmonicSpectrum;

/**
 * What the mains, filter, bridge and bus see over a line half cycle.
 *
 * @param power mean line power [W]
 * @param current rms line current [A]
 * @param peakCurrent greatest line current [A]
 * @param spectrum odd harmonics of the line current, orders 1 to 39
 * @param displacementFactor cosine of the angle between voltage and fundamental current [-]
 * @param conductionAngle angle of the half cycle in which the bridge conducts [deg]
 * @param bridgeMean mean current through the bridge [A]
 * @param bridgeRms rms current through the bridge [A]
 * @param bridgeLoss loss of the bridge [W]
 * @param filterLoss loss in fuse, filter winding and line resistance [W]
 * @param busPeak greatest bus voltage [V]
 * @param busValley least bus voltage [V]
 */
public record LineStress(
        double power,
        double current,
        double peakCurrent,
        HarmonicSpectrum spectrum,
        double displacementFactor,
        double conductionAngle,
        double bridgeMean,
        double bridgeRms,
        double bridgeLoss,
        double filterLoss,
        double busPeak,
        double busValley) {

    private static final int HIGHEST_ORDER = 39;

    static LineStress of(Operation operation) {
        Driver driver = operation.driver();
        List<AnglePoint> points = operation.points();
        double n = points.size();
        double power = 0;
        double square = 0;
        double bridgeCharge = 0;
        double bridgeSquare = 0;
        double bridgeLoss = 0;
        double peak = 0;
        double busPeak = 0;
        double busValley = Double.MAX_VALUE;
        int conducting = 0;
        for (AnglePoint point : points) {
            double line = point.lineCurrent();
            double bridge = point.bridgeCurrent();
            power += point.lineVoltage() * line / n;
            square += line * line / n;
            bridgeCharge += bridge / n;
            bridgeSquare += bridge * bridge / n;
            bridgeLoss += 2
                    * bridge
                    * (driver.bridge().junction(bridge) + driver.bridge().resistance() * bridge)
                    / n;
            peak = Math.max(peak, Math.abs(line));
            busPeak = Math.max(busPeak, point.busVoltage());
            busValley = Math.min(busValley, point.busVoltage());
            conducting += bridge > 0 ? 1 : 0;
        }
        double resistance = driver.line().resistance() + driver.filter().seriesResistance();
        LineSpectrum spectrum = LineSpectrum.of(points, HIGHEST_ORDER);
        return new LineStress(
                power,
                Math.sqrt(square),
                peak,
                spectrum.magnitudes(),
                spectrum.displacementFactor(),
                180 * conducting / n,
                bridgeCharge,
                Math.sqrt(bridgeSquare),
                bridgeLoss,
                resistance * square,
                busPeak,
                busValley);
    }

    /** Line power over rms voltage times rms current [-]. */
    public double powerFactor(double lineVoltage) {
        return power / (lineVoltage * current);
    }
}
