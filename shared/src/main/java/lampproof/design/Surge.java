package lampproof.design;

import lampproof.spec.Keyword;

/**
 * A surge between line and neutral.
 *
 * @param wave its shape
 * @param voltage peak of the open generator [V]
 * @param impedance resistance of the generator of the ring wave [Ohm]
 * @param angle line angle at which it strikes [rad]
 */
public record Surge(Wave wave, double voltage, double impedance, double angle) {

    /** The shape of a surge. */
    public enum Wave implements Keyword {
        /** Ring wave of 100 kHz. */
        RING,
        /** Combination wave: 1.2/50 us open, 8/20 us shorted. */
        COMBINATION
    }

    /** The surge of the surge test. */
    static Surge of(DesignValues values) {
        Wave wave = values.keyword("surge.wave", "ring: the usual test of lamps", Wave.RING);
        boolean ring = wave == Wave.RING;
        double voltage = values.amount(
                "surge.voltage",
                ring
                        ? "2.5 kV ring wave, ENERGY STAR for lamps (from memory)"
                        : "0.5 kV line to line up to 25 W, IEC 61547 (from memory)",
                () -> ring ? 2500 : 500);
        double impedance =
                ring ? values.amount("surge.impedance", "30 Ohm, IEEE C62.41.2 category A (from memory)", () -> 30) : 2;
        double angle = values.amount("surge.angle", "90 deg: the crest of the line", () -> 90);
        return new Surge(wave, voltage, impedance, Math.toRadians(angle));
    }
}
