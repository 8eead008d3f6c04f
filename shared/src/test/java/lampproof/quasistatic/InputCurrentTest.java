package lampproof.quasistatic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import lampproof.design.Driver;
import lampproof.design.Lamps;
import lampproof.design.Law;
import lampproof.design.Sizing;
import org.junit.jupiter.api.Test;

/** The series of the input current against a discrete Fourier transform of the same current, written down once more. */
class InputCurrentTest {

    private static final int SAMPLES = 20_000;
    private static final double BAND = 0.004;

    /** The inductor current of a cycle that rings once: on, rise, diode, ring without the body diode. */
    @Test
    void aStepUpCycleHasTheSpectrumOfItsSamples() {
        Operation operation =
                SteadyState.of(Sizing.of(Lamps.stepUp(Law.BOUNDARY)).driver());
        AnglePoint point = operation.crest();
        Driver driver = operation.driver();
        assertSpectrum(driver, point, time -> inductorCurrent(driver, point, time, point.busVoltage()));
    }

    /** What the switch carries; while the diode conducts the current circles without the bus. */
    @Test
    void aStepDownCycleHasTheSpectrumOfItsSamples() {
        Operation operation =
                SteadyState.of(Sizing.of(Lamps.stepDown(Law.FIXED_OFF_TIME)).driver());
        AnglePoint point = operation.crest();
        Driver driver = operation.driver();
        double source = point.busVoltage() - point.outputVoltage();
        CellCycle cycle = point.cycle();
        double risen = cycle.onTime() + cycle.rise().time();
        double landed = risen + cycle.diode().time();
        assertSpectrum(
                driver,
                point,
                time -> time > risen && time < landed ? 0 : inductorCurrent(driver, point, time, source));
    }

    private static void assertSpectrum(Driver driver, AnglePoint point, DoubleUnaryOperator current) {
        double[] samples = new double[SAMPLES];
        for (int k = 0; k < SAMPLES; k++) {
            samples[k] =
                    current.applyAsDouble((k + 0.5) / SAMPLES * point.cycle().period());
        }
        InputCurrent series = InputCurrent.of(driver, point);
        double fundamental = amplitude(series, 1);
        for (int order = 1; order <= ConductedNoise.HIGHEST_ORDER; order++) {
            assertThat(amplitude(series, order))
                    .as("order " + order)
                    .isCloseTo(transformed(samples, order), within(BAND * fundamental));
        }
    }

    private static double amplitude(InputCurrent series, int order) {
        return Math.sqrt(2 * series.meanSquare(order));
    }

    /** Amplitude of a harmonic by the discrete Fourier transform. */
    private static double transformed(double[] samples, int order) {
        double real = 0;
        double imaginary = 0;
        for (int k = 0; k < samples.length; k++) {
            double phase = 2 * Math.PI * order * k / samples.length;
            real += samples[k] * Math.cos(phase);
            imaginary += samples[k] * Math.sin(phase);
        }
        return 2 * Math.hypot(real, imaginary) / samples.length;
    }

    private static double inductorCurrent(Driver driver, AnglePoint point, double time, double source) {
        CellCycle cycle = point.cycle();
        double inductance = driver.inductor().inductance();
        double impedance = Math.sqrt(inductance / driver.powerSwitch().capacitance());
        double left = time - cycle.onTime();
        if (left < 0) {
            return along(cycle.startCurrent(), cycle.peakCurrent(), 1 + left / cycle.onTime());
        }
        double landing = cycle.diode().from();
        if (left < cycle.rise().time()) {
            return along(cycle.peakCurrent(), landing, left / cycle.rise().time());
        }
        left -= cycle.rise().time();
        if (left < cycle.diode().time()) {
            return along(landing, cycle.diode().to(), left / cycle.diode().time());
        }
        left -= cycle.diode().time();
        double swing = cycle.ring().time() == 0 ? 0 : point.outputVoltage() - source;
        return -swing / impedance * Math.sin(left * impedance / inductance);
    }

    private static double along(double from, double to, double share) {
        return from + share * (to - from);
    }
}
