package lampproof.physics;

import java.math.BigDecimal;

/**
 * Preferred values of resistors and capacitors, with rounding up, down and to the nearest.
 *
 * <p>E24 as listed; E12 and E6 every second and fourth of it; E96 {@code 10^(i / 96)} rounded to three digits.
 *
 * <p>Valid for any positive value; the nearest is the one of least ratio.
 *
 * <p>Source: IEC 60063, E24 read in documents that restate it; that E96 has no exception from memory.
 */
public enum PreferredSeries {
    /** Six values per decade. */
    E6(6),
    /** Twelve values per decade. */
    E12(12),
    /** Twenty-four values per decade. */
    E24(24),
    /** Ninety-six values per decade. */
    E96(96);

    private static final int[] LISTED = {
        100, 110, 120, 130, 150, 160, 180, 200, 220, 240, 270, 300, 330, 360, 390, 430, 470, 510, 560, 620, 680, 750,
        820, 910
    };

    /** Values closer than this ratio count as equal, so that a preferred value rounds to itself. */
    private static final double EQUAL = 1e-9;

    private final int perDecade;

    PreferredSeries(int perDecade) {
        this.perDecade = perDecade;
    }

    /** The smallest preferred value that is not below the given one [any unit]. */
    public double up(double value) {
        int decade = decade(value);
        int step = 0;
        while (member(decade, step) < value * (1 - EQUAL)) {
            step++;
        }
        return member(decade, step);
    }

    /** The largest preferred value that is not above the given one [any unit]. */
    public double down(double value) {
        int decade = decade(value);
        int step = perDecade;
        while (member(decade, step) > value * (1 + EQUAL)) {
            step--;
        }
        return member(decade, step);
    }

    /** The preferred value whose ratio to the given one is closest to 1 [any unit]. */
    public double nearest(double value) {
        double above = up(value);
        double below = down(value);
        return above / value < value / below ? above : below;
    }

    private static int decade(double value) {
        Require.positive("value to round", value);
        return (int) Math.floor(Math.log10(value));
    }

    /** Member of a step from 0 to the number per decade; decimal arithmetic gives the double that prints cleanly. */
    private double member(int decade, int step) {
        int wrapped = step % perDecade;
        return BigDecimal.valueOf(mantissa(wrapped), 2)
                .scaleByPowerOfTen(decade + step / perDecade)
                .doubleValue();
    }

    private long mantissa(int step) {
        return perDecade <= LISTED.length
                ? LISTED[step * LISTED.length / perDecade]
                : Math.round(100 * Math.pow(10, (double) step / perDecade));
    }
}
