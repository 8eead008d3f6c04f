package lampproof.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import lampproof.waveform.Span;
import lampproof.waveform.file.WaveformFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Mains voltage and current of three appliances, captured by others: 2 kHz, the last 0.8 s of 1.5 s.
 *
 * <p>Source: voelkerb/Appliance_Classification_Features, commit b8cfde83. Its list of right values states tolerances for
 * the kettle alone; those of the other figures are ours, wide enough for two ways of fitting a drifting line frequency.
 */
class CapturedAppliancesTest {

    private static final Window WINDOW = Window.of(0.7, 1.4995);

    @ParameterizedTest
    @ValueSource(strings = {"fridge", "television", "kettle"})
    void powerAndItsFactor(String appliance) {
        Map<String, String> expected = Captured.expected("socket/expected.csv", appliance);
        WaveformFile file = open(appliance);
        MeasurementPass pass = new MeasurementPass(Interpolation.SAMPLED);
        Channel v = pass.channel("voltage");
        Channel i = pass.channel("current");
        RootMeanSquare voltage = pass.add(new RootMeanSquare(WINDOW, v));
        RootMeanSquare current = pass.add(new RootMeanSquare(WINDOW, i));
        MeanProduct power = pass.add(new MeanProduct(WINDOW, v, i));
        PowerFactor factor = pass.add(new PowerFactor(WINDOW, v, i));
        FundamentalFrequency frequency = pass.add(new FundamentalFrequency(WINDOW, v, 45, 65));
        MeanProduct before = pass.add(new MeanProduct(Window.of(0, 0.48), v, i));
        pass.over(file);
        assertClose(voltage, expected, "V_rms", 1e-3);
        assertClose(current, expected, "I_rms", 1e-3);
        assertClose(power, expected, "P_W", 1e-3);
        assertThat(factor.result().value()).isCloseTo(number(expected, "PF"), within(1e-3));
        assertThat(frequency.result().value()).isCloseTo(number(expected, "f_Hz"), within(0.01));
        assertThat(before.result().value()).isCloseTo(number(expected, "P_before_W"), within(0.05));
    }

    @ParameterizedTest
    @ValueSource(strings = {"fridge", "television", "kettle"})
    void distortionOverWholePeriodsOfTheLineAsItIs(String appliance) {
        Map<String, String> expected = Captured.expected("socket/expected.csv", appliance);
        WaveformFile file = open(appliance);
        MeasurementPass first = new MeasurementPass(Interpolation.SAMPLED);
        FundamentalFrequency fit = first.add(new FundamentalFrequency(WINDOW, first.channel("voltage"), 45, 65));
        first.over(file);
        double line = fit.result().value();
        MeasurementPass pass = new MeasurementPass(Interpolation.SAMPLED);
        Window window = LineWindow.last(new Span(WINDOW.start(), WINDOW.end()), line);
        Harmonics voltage = pass.add(new Harmonics(window, pass.channel("voltage"), line));
        Harmonics current = pass.add(new Harmonics(window, pass.channel("current"), line));
        PowerFactor factor = pass.add(new PowerFactor(window, pass.channel("voltage"), pass.channel("current")));
        pass.over(file);
        assertThat(window.periods()).isEqualTo(39);
        double ofVoltage = 100 * TotalHarmonicDistortion.of(voltage, 19).value();
        double ofCurrent = 100 * TotalHarmonicDistortion.of(current, 19).value();
        assertThat(ofVoltage).isCloseTo(number(expected, "THD_v_19"), within(0.15));
        assertThat(ofCurrent).isCloseTo(number(expected, "THD_i_19"), within(0.6));
        assertThat(DisplacementFactor.of(voltage, current).value())
                .isCloseTo(number(expected, "cos_phi1"), within(0.01));
        assertThat(100 * current.rms(2).value() / current.rms(1).value())
                .isCloseTo(number(expected, "h2_pct"), within(1.0));
        if (appliance.equals("kettle")) {
            assertThat(factor.result().value()).isCloseTo(1.0, within(5e-5));
            assertThat(ofCurrent).isCloseTo(ofVoltage, within(0.05));
        }
    }

    private static WaveformFile open(String appliance) {
        Path file = Captured.file("socket/" + appliance + ".csv");
        return WaveformFile.open(file);
    }

    private static void assertClose(Measurement figure, Map<String, String> expected, String name, double relative) {
        double value = number(expected, name);
        assertThat(figure.result().value()).as(name).isCloseTo(value, within(relative * value));
    }

    private static double number(Map<String, String> expected, String name) {
        return Double.parseDouble(expected.get(name));
    }
}
