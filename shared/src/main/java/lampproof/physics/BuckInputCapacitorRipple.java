package lampproof.physics;

/**
 * Rms current of the capacitor in front of a step-down converter in continuous conduction.
 *
 * <p>{@code I = sqrt(D (I^2 + dIpp^2 / 12) - (D I)^2)}.
 *
 * <p>Valid when the capacitor carries the whole ripple and the source only the mean current.
 *
 * <p>Source: rms of the switch current less its mean, from R. W. Erickson, D. Maksimović, Fundamentals of Power
 * Electronics, 3rd ed., 2020, app. A.
 */
public final class BuckInputCapacitorRipple {

    private BuckInputCapacitorRipple() {}

    /**
     * Rms current of the input capacitor.
     *
     * @param inductorCurrent mean inductor current [A]
     * @param inductorRipple inductor ripple, peak to peak [A]
     * @param duty share of the period with the switch on [-]
     * @return rms current [A]
     */
    public static double rms(double inductorCurrent, double inductorRipple, double duty) {
        Require.notNegative("inductor current [A]", inductorCurrent);
        Require.notNegative("inductor ripple [A]", inductorRipple);
        Require.within("duty [-]", duty, 0, 1);
        double meanSquare = inductorCurrent * inductorCurrent + inductorRipple * inductorRipple / 12;
        return Math.sqrt(duty * meanSquare - Math.pow(duty * inductorCurrent, 2));
    }
}
