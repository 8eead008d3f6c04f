package lampproof.physics;

/**
 * Least light that LED sources must keep in the endurance test of the European Union.
 *
 * <p>{@code XLMF = exp(3000 h ln 0.7 / L70)}, at most 96 %.
 *
 * <p>Valid for a declared life L70B50.
 *
 * <p>Source: Commission Regulation (EU) 2019/2020, consolidated 1 March 2021, Annex I (60), Annex II table 4; formula
 * from memory.
 */
public final class LumenMaintenanceFloor {

    private static final double TEST_TIME = 3000 * 3600.0;
    private static final double CAP = 0.96;

    private LumenMaintenanceFloor() {}

    /**
     * Least light after the endurance test.
     *
     * @param declaredLife declared life L70 [s]
     * @return light over initial light [-]
     */
    public static double of(double declaredLife) {
        Require.positive("declared life [s]", declaredLife);
        return Math.min(CAP, Math.exp(TEST_TIME * Math.log(0.7) / declaredLife));
    }
}
