package lampproof.physics;

import org.hipparchus.complex.Complex;

/**
 * Impedance that an artificial mains network shows to the equipment under test.
 *
 * <p>{@code Z = R parallel (Rs + j 2 pi f L)}.
 *
 * <p>Valid within 20 per cent in magnitude, the tolerance of the standard. Neglects the supply side.
 *
 * <p>Source: CISPR 16-1-2, V-networks, read in documents that restate it.
 *
 * @param resistance resistance of the measuring side [Ohm]
 * @param inductance inductance of the supply side [H]
 * @param seriesResistance resistance in series with the inductance [Ohm]
 */
public record ArtificialNetwork(double resistance, double inductance, double seriesResistance) {

    /** Network for 9 kHz to 30 MHz. */
    public static final ArtificialNetwork FROM_9_KHZ = new ArtificialNetwork(50, 50e-6, 5);

    /** Network for 150 kHz to 30 MHz. */
    public static final ArtificialNetwork FROM_150_KHZ = new ArtificialNetwork(50, 50e-6, 0);

    /** Checks the elements. */
    public ArtificialNetwork {
        Require.positive("resistance [Ohm]", resistance);
        Require.positive("inductance [H]", inductance);
        Require.notNegative("series resistance [Ohm]", seriesResistance);
    }

    /** Impedance [Ohm] at a frequency [Hz]. */
    public Complex impedance(double frequency) {
        Require.positive("frequency [Hz]", frequency);
        Complex supply = new Complex(seriesResistance, 2 * Math.PI * frequency * inductance);
        return supply.multiply(resistance).divide(supply.add(resistance));
    }
}
