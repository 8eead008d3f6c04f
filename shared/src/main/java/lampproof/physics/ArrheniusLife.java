package lampproof.physics;

/**
 * Life over temperature by one activation energy.
 *
 * <p>{@code Ea = k ln(t1 / t2) / (1/T1 - 1/T2)}; {@code t = t1 exp((Ea / k) (1/T - 1/T1))}.
 *
 * <p>Valid between and not far beyond the two temperatures that gave the energy, for one mechanism of failure.
 *
 * <p>Source: Arrhenius rate law, common practice, no source for its use on whole drivers.
 *
 * @param activationEnergy activation energy [eV]
 * @param life life at the reference temperature [s]
 * @param temperature reference temperature [K]
 */
public record ArrheniusLife(double activationEnergy, double life, double temperature) {

    /** Checks the parameters. */
    public ArrheniusLife {
        Require.positive("activation energy [eV]", activationEnergy);
        Require.positive("life [s]", life);
        Require.positive("temperature [K]", temperature);
    }

    /**
     * Life through two points.
     *
     * @param coolLife life at the lower temperature [s]
     * @param coolTemperature lower temperature [K]
     * @param hotLife life at the higher temperature, the shorter [s]
     * @param hotTemperature higher temperature [K]
     * @return the life law
     */
    public static ArrheniusLife through(
            double coolLife, double coolTemperature, double hotLife, double hotTemperature) {
        Require.positive("lower temperature [K]", coolTemperature);
        Require.below("lower temperature [K]", coolTemperature, "higher temperature [K]", hotTemperature);
        Require.positive("life at the higher temperature [s]", hotLife);
        double energy = PhysicalConstants.BOLTZMANN_ELECTRONVOLT
                * Math.log(coolLife / hotLife)
                / (1 / coolTemperature - 1 / hotTemperature);
        return new ArrheniusLife(energy, coolLife, coolTemperature);
    }

    /** Life [s] at a temperature [K]. */
    public double at(double otherTemperature) {
        Require.positive("temperature [K]", otherTemperature);
        double scaled = activationEnergy / PhysicalConstants.BOLTZMANN_ELECTRONVOLT;
        return life * Math.exp(scaled * (1 / otherTemperature - 1 / temperature));
    }
}
