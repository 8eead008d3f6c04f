package lampproof.physics;

/**
 * Copper area of the wire of a winding that fills its share of the window.
 *
 * <p>{@code A = a Ku WA / N}, with the share a of the window equal to the share of the winding in the total rms
 * current.
 *
 * <p>Valid for windings of equal current density, which is the division of least copper loss.
 *
 * <p>Source: R. W. Erickson, D. Maksimović, Fundamentals of Power Electronics, 3rd ed., 2020, sect. 11.4.1.
 */
public final class WindowAllocation {

    private WindowAllocation() {}

    /**
     * Copper area of one turn.
     *
     * @param share share of the window for this winding [-]
     * @param fill share of the window that is copper [-]
     * @param windowArea window area [m2]
     * @param turns turns [-]
     * @return copper area [m2]
     */
    public static double wireArea(double share, double fill, double windowArea, double turns) {
        Require.within("share of the window [-]", share, 0, 1);
        Require.within("fill [-]", fill, 0, 1);
        Require.positive("window area [m2]", windowArea);
        Require.positive("turns [-]", turns);
        return share * fill * windowArea / turns;
    }
}
