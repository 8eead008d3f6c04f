package lampproof.quasistatic;

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
 * @param busRippleCurrent rms current of the bus capacitor [A]
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
        double busValley,
        double busRippleCurrent) {

    /** Line power over rms voltage times rms current [-]. */
    public double powerFactor(double lineVoltage) {
        return power / (lineVoltage * current);
    }
}
