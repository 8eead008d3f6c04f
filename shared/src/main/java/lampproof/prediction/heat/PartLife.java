package lampproof.prediction.heat;

import static lampproof.physics.PhysicalConstants.ZERO_CELSIUS;

import lampproof.design.LifePoints;
import lampproof.physics.ArrheniusLife;
import lampproof.physics.TenDegreeRule;

/** Hours of life at a temperature, from life at two others. */
public final class PartLife {

    private static final double HOUR = 3600;

    private PartLife() {}

    /** Life by the Arrhenius law through both points [h], at a temperature [degC]. */
    public static double arrhenius(LifePoints points, double temperature) {
        ArrheniusLife life = ArrheniusLife.through(
                points.coolHours() * HOUR,
                points.coolTemperature() + ZERO_CELSIUS,
                points.hotHours() * HOUR,
                points.hotTemperature() + ZERO_CELSIUS);
        return life.at(temperature + ZERO_CELSIUS) / HOUR;
    }

    /** Life by the ten-degree rule from the hotter point [h], at a temperature [degC]; nothing is promised above it. */
    public static double tenDegrees(LifePoints points, double temperature) {
        if (temperature > points.hotTemperature()) {
            return 0;
        }
        double rated = points.hotTemperature() + ZERO_CELSIUS;
        return TenDegreeRule.life(points.hotHours() * HOUR, rated, temperature + ZERO_CELSIUS) / HOUR;
    }
}
