package lampproof.prediction.loss;

import java.util.List;
import lampproof.design.Dimming;
import lampproof.design.Driver;
import lampproof.quasistatic.AnglePoint;

/** The bleeder: a resistor while the rectified line is low, and a current that tops up what the lamp draws. */
public final class Bleeder {

    /** From 30 to 150 degrees, where a triac must not go out. */
    private static final double MIDDLE = Math.PI / 3;

    private Bleeder() {}

    static double current(Dimming dimming, AnglePoint point) {
        return dimming.bleederCurrent(point.lineVoltage(), point.bridgeCurrent());
    }

    /** Greatest current of the bleeder from 30 to 150 degrees [A]. */
    public static double holdCurrent(Driver driver, List<AnglePoint> points) {
        double greatest = 0;
        for (AnglePoint point : points) {
            if (Math.abs(point.angle() - Math.PI / 2) <= MIDDLE) {
                greatest = Math.max(greatest, current(driver.dimming(), point));
            }
        }
        return greatest;
    }

    /** Rms voltage that the noise capacitor of a dimmer that is off leaves across the bleeder [V]; 0 without a dimmer. */
    public static double offVoltage(Driver driver) {
        Dimming dimming = driver.dimming();
        if (dimming.edge() == Dimming.Edge.NONE) {
            return 0;
        }
        double susceptance = driver.line().angularFrequency() * dimming.capacitance();
        return driver.line().voltage() * susceptance / Math.hypot(susceptance, 1 / dimming.bleederResistance());
    }
}
