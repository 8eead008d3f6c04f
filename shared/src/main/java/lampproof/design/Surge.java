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
}
