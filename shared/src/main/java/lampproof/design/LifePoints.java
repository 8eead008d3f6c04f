package lampproof.design;

/**
 * Life at two temperatures.
 *
 * @param coolHours life at the cooler temperature [h]
 * @param coolTemperature the cooler temperature [degC]
 * @param hotHours life at the hotter temperature [h]
 * @param hotTemperature the hotter temperature [degC]
 */
public record LifePoints(double coolHours, double coolTemperature, double hotHours, double hotTemperature) {

    /** Whether an Arrhenius law goes through the points. */
    boolean isShorterWhenHot() {
        return coolTemperature < hotTemperature && coolHours > hotHours;
    }
}
