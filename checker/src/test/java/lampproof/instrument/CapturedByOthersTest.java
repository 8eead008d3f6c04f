package lampproof.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import lampproof.measure.Captured;
import lampproof.measure.Measured;
import lampproof.waveform.file.WaveformFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Captures made by others, recognised and measured without a word from the user.
 *
 * <p>Sources: voelkerb/Appliance_Classification_Features, commit b8cfde83; yeutterg/beautiful-flicker, commit 59e8c2a5.
 */
class CapturedByOthersTest {

    @ParameterizedTest
    @ValueSource(strings = {"fridge", "television", "kettle"})
    void appliancesOnceTheyRun(String appliance) {
        Map<String, String> expected = Captured.expected("socket/expected.csv", appliance);
        CaptureReport report = report("socket/" + appliance + ".csv", 0.69);
        assertRelative(report, "line.frequency", expected.get("f_Hz"), 2e-4);
        assertRelative(report, "line.voltage.rms", expected.get("V_rms"), 2e-3);
        assertRelative(report, "line.current.rms", expected.get("I_rms"), 2e-3);
        assertRelative(report, "line.current.inrush", expected.get("I_peak_inrush_A"), 1e-3);
        assertThat(value(report, "line.power_factor")).isCloseTo(number(expected, "PF"), within(5e-3));
        assertThat(value(report, "line.displacement_factor")).isCloseTo(number(expected, "cos_phi1"), within(0.01));
        assertThat(value(report, "line.current.thd")).isCloseTo(number(expected, "THD_i_19"), within(0.6));
        assertThat(value(report, "line.voltage.thd")).isCloseTo(number(expected, "THD_v_19"), within(0.15));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9})
    void percentFlickerOfNineLamps(int lamp) {
        String file = "lamp-0" + lamp + ".csv";
        Map<String, String> expected = Captured.expected("light/expected.csv", file);
        CaptureReport report = report("light/" + file, Double.NEGATIVE_INFINITY);
        boolean modulated = lamp == 4 || lamp == 5;
        double percent = modulated ? 100 : number(expected, "pf_boxcar_0p1ms");
        assertThat(value(report, "light.flicker.percent"))
                .isCloseTo(percent, within(0.3))
                .isLessThanOrEqualTo(100);
        if (lamp != 6) {
            assertRelative(report, "light.flicker.frequency", expected.get("f_fit_Hz"), 3e-3);
        }
    }

    private static CaptureReport report(String name, double from) {
        WaveformFile file = WaveformFile.open(Captured.file(name));
        return Capture.report(file, Recognition.of(file), from, Double.POSITIVE_INFINITY);
    }

    private static void assertRelative(CaptureReport report, String name, String expected, double share) {
        double value = Double.parseDouble(expected);
        assertThat(value(report, name)).as(name).isCloseTo(value, within(share * value));
    }

    private static double number(Map<String, String> expected, String name) {
        return Double.parseDouble(expected.get(name));
    }

    private static double value(CaptureReport report, String name) {
        return report.sections().stream()
                .flatMap(section -> section.figures().stream())
                .filter(figure -> figure.name().equals(name))
                .map(CaptureFigure::value)
                .mapToDouble(Measured::value)
                .findFirst()
                .orElseThrow();
    }
}
