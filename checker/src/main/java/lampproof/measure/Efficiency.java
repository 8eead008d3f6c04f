package lampproof.measure;

import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/** Power out over power in, including the energy that the circuit's own stores supplied or absorbed [-]. */
public final class Efficiency {

    private Efficiency() {}

    /**
     * The efficiency over a window.
     *
     * @param input mean power in [W]
     * @param output mean power out [W]
     * @param released energy in all stores at the start of the window less that at its end [J]
     * @param length length of the window [s]
     * @return absent when it would lie outside 0 to 1
     */
    public static Measured of(Measured input, Measured output, double released, double length) {
        return input.then(in -> output.then(out -> ratio(in, out, released / length)));
    }

    private static Measured ratio(double in, double out, double fromStores) {
        if (in * out < 0) {
            return Measured.absent("power in " + Engineering.rounded(in, "W") + " and power out "
                    + Engineering.rounded(out, "W") + " have opposite signs: input current reversed?");
        }
        Measured efficiency = Measured.ratio(out, in + fromStores, "no input power");
        boolean impossible = efficiency.present() && (efficiency.value() > 1 || efficiency.value() < 0);
        return impossible
                ? Measured.absent("an efficiency of " + PlainNumber.fixed(100 * efficiency.value(), 1)
                        + " % is impossible: not steady, or a power is wrong")
                : efficiency;
    }
}
