package lampproof.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConductedEmissionTest {

    /** 47 CFR 18.307 (a) and (b); sloping limits interpolated over log frequency. */
    @ParameterizedTest
    @CsvSource({
        "20e3, 110",
        "50e3, 90",
        "65e3, 87.61",
        "100e3, 83.69",
        "200e3, 63.61",
        "300e3, 60.24",
        "1e6, 56",
        "10e6, 60",
        "30e6, 60"
    })
    void quasi_peak_limits(double frequency, double limit) {
        assertThat(ConductedLimit.quasiPeak(frequency)).hasValueCloseTo(limit, within(0.006));
    }

    @Test
    void average_limits_are_ten_lower_and_begin_at_150_kHz() {
        assertThat(ConductedLimit.average(150e3)).hasValueCloseTo(56.0, within(1e-9));
        assertThat(ConductedLimit.average(1e6)).hasValueCloseTo(46.0, within(1e-9));
        assertThat(ConductedLimit.average(10e6)).hasValueCloseTo(50.0, within(1e-9));
        assertThat(ConductedLimit.average(149e3)).isEmpty();
        assertThat(ConductedLimit.quasiPeak(8e3)).isEmpty();
        assertThat(ConductedLimit.quasiPeak(31e6)).isEmpty();
    }

    /** Definition of the decibel: 250 uV is 48.0, 3000 uV 69.5, 1000 uV 60.0 dBuV. */
    @ParameterizedTest
    @CsvSource({"250e-6, 48.0", "3000e-6, 69.5", "1000e-6, 60.0"})
    void level_in_decibel(double voltage, double level) {
        assertThat(ConductedLimit.level(voltage)).isCloseTo(level, within(0.05));
    }

    /** CISPR 16-1-2 networks, recomputed: magnitude and angle with 5 Ohm, magnitude without. */
    @ParameterizedTest
    @CsvSource({
        "9e3, 5.21, 26.5, 2.82",
        "15e3, 6.22, 38.4, 4.69",
        "20e3, 7.25, 45.0, 6.23",
        "50e3, 14.41, 56.4, 14.99",
        "80e3, 21.19, 54.2, 22.46",
        "100e3, 25.11, 51.2, 26.60",
        "150e3, 32.71, 43.4, 34.29",
        "300e3, 43.25, 27.2, 44.17",
        "500e3, 47.21, 17.5, 47.64",
        "1e6, 49.26, 9.0, 49.38",
        "30e6, 50.00, 0.3, 50.00"
    })
    void artificial_network_impedance(double frequency, double magnitude, double degrees, double without) {
        Complex impedance = ArtificialNetwork.FROM_9_KHZ.impedance(frequency);
        assertThat(impedance.norm()).isCloseTo(magnitude, within(0.006));
        assertThat(Math.toDegrees(impedance.getArgument())).isCloseTo(degrees, within(0.06));
        assertThat(ArtificialNetwork.FROM_150_KHZ.impedance(frequency).norm()).isCloseTo(without, within(0.006));
    }
}
