package lampproof.physics;

import static lampproof.physics.CombinationWaveGenerator.CAPACITANCE;
import static lampproof.physics.CombinationWaveGenerator.DISCHARGE_RESISTANCE;
import static lampproof.physics.CombinationWaveGenerator.INDUCTANCE;
import static lampproof.physics.CombinationWaveGenerator.OUTPUT_RESISTANCE;
import static lampproof.physics.CombinationWaveGenerator.SERIES_RESISTANCE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Waves and their tolerances: IEC 61000-4-5; they are measured as that standard defines front and duration. */
class CombinationWaveGeneratorTest {

    private static final double STEP = 2e-9;
    private static final int STEPS = 60_000;

    @Test
    void theOpenVoltageIsAnImpulseOfOnePointTwoByFiftyMicroseconds() {
        double[] wave = wave(false);
        double front = 1.67 * (rise(wave, 0.9) - rise(wave, 0.3));
        assertThat(wave[peak(wave)]).isCloseTo(500, within(0.02 * 500));
        assertThat(front).isCloseTo(1.2e-6, within(0.3 * 1.2e-6));
        assertThat(fall(wave) - (rise(wave, 0.3) - 0.3 * front)).isCloseTo(50e-6, within(0.2 * 50e-6));
    }

    @Test
    void theShortedCurrentIsAnImpulseOfEightByTwentyMicrosecondsAndHalfTheVoltage() {
        double[] wave = wave(true);
        double front = 1.25 * (rise(wave, 0.9) - rise(wave, 0.1));
        assertThat(wave[peak(wave)]).isCloseTo(250, within(0.02 * 250));
        assertThat(front).isCloseTo(8e-6, within(0.2 * 8e-6));
        assertThat(fall(wave) - (rise(wave, 0.1) - 0.1 * front)).isCloseTo(20e-6, within(0.2 * 20e-6));
    }

    private static double[] wave(boolean shorted) {
        double stored = CombinationWaveGenerator.chargingVoltage(500);
        double current = 0;
        double[] wave = new double[STEPS];
        for (int i = 0; i < STEPS; i++) {
            double output = shorted ? 0 : OUTPUT_RESISTANCE * current;
            current += STEP * (stored - SERIES_RESISTANCE * current - output) / INDUCTANCE;
            stored -= STEP * (current + stored / DISCHARGE_RESISTANCE) / CAPACITANCE;
            wave[i] = shorted ? current : OUTPUT_RESISTANCE * current;
        }
        return wave;
    }

    private static int peak(double[] wave) {
        int best = 0;
        for (int i = 0; i < wave.length; i++) {
            best = wave[i] > wave[best] ? i : best;
        }
        return best;
    }

    private static double rise(double[] wave, double share) {
        double level = share * wave[peak(wave)];
        int i = 0;
        while (wave[i] < level) {
            i++;
        }
        return STEP * i;
    }

    private static double fall(double[] wave) {
        int i = peak(wave);
        double half = wave[i] / 2;
        while (wave[i] > half) {
            i++;
        }
        return STEP * i;
    }
}
