package lampproof.instrument;

import static lampproof.instrument.ScopeTable.sine;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import lampproof.fault.UserFault;
import lampproof.measure.Measured;
import lampproof.waveform.file.WaveformFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A line voltage of 325 V crest and a current of 0.1 A crest that lags by 0.3, with a third harmonic of 20 %: power, rms
 * and distortion follow by hand.
 */
class CaptureTest {

    private static final double POWER = 325 * 0.1 / 2 * Math.cos(0.3);
    private static final double RMS = 0.1 * Math.sqrt((1 + 0.04) / 2);

    @TempDir
    private Path folder;

    @Test
    void everyFigureOfVoltageAndCurrentIsTheOneWorkedOutByHand() {
        CaptureReport report = report(lamp("time,voltage (V),current (A)", 1), "");
        assertThat(value(report, "line.frequency")).isCloseTo(50, within(1e-3));
        assertThat(value(report, "line.voltage.rms")).isCloseTo(325 / Math.sqrt(2), within(0.02));
        assertThat(value(report, "line.current.rms")).isCloseTo(RMS, within(1e-5));
        assertThat(value(report, "line.power.mean")).isCloseTo(POWER, within(2e-3));
        assertThat(value(report, "line.power.apparent")).isCloseTo(325 / Math.sqrt(2) * RMS, within(2e-3));
        assertThat(value(report, "line.power_factor")).isCloseTo(Math.cos(0.3) / Math.sqrt(1.04), within(1e-4));
        assertThat(value(report, "line.displacement_factor")).isCloseTo(Math.cos(0.3), within(1e-4));
        assertThat(value(report, "line.current.thd")).isCloseTo(20, within(0.01));
        assertThat(value(report, "line.current.harmonic.3")).isCloseTo(20, within(0.01));
        assertThat(value(report, "line.current.harmonic.40")).isCloseTo(0, within(0.01));
        assertThat(report.remarks()).isEmpty();
        assertThat(report.sections().get(0).window())
                .endsWith(", 5 line periods")
                .isNotEmpty();
    }

    @Test
    void aLampOfFifteenWattsIsJudgedByTheRulesForSmallLamps() {
        CaptureLimit limit = report(lamp("time,voltage (V),current (A)", 1), "")
                .sections()
                .get(0)
                .limits()
                .get(0);
        assertThat(limit.rule()).startsWith("IEC 61000-3-2");
        assertThat(limit.verdict()).isEqualTo("kept");
        assertThat(limit.text()).startsWith("nearest to its limit: order 3 0.000911, limit 0.00340");
    }

    @Test
    void aProbeTurnedRoundIsTurnedBackAndSaidSo() {
        CaptureReport report = report(lamp("time,voltage (V),current (A)", -1), "");
        assertThat(value(report, "line.power.mean")).isCloseTo(POWER, within(2e-3));
        assertThat(report.remarks())
                .containsExactly(
                        "power flows into the line: is the current probe reversed? The sign of line.current was inverted");
        assertThat(report.mappings()).contains(new Mapping("line.current", "current", -1, 0, 0));
    }

    @Test
    void gainOffsetAndDelayAreTakenOut() {
        double delay = 120e-6;
        WaveformFile file =
                ScopeTable.file(folder, "time,CH1,CH2", t -> sine(t, 1.625, 1, 0), t -> 0.5 + 10 * current(t - delay));
        CaptureReport report = report(file, "line.voltage=CH1*200,line.current=CH2*0.1-0.05@120us");
        assertThat(value(report, "line.power.mean")).isCloseTo(POWER, within(2e-3));
        assertThat(value(report, "line.displacement_factor")).isCloseTo(Math.cos(0.3), within(1e-4));
        assertThat(value(report, "line.current.rms")).isCloseTo(RMS, within(2e-5));
    }

    /** P = U I cos(phi + w t): a skew of t moves the phase of the fundamental by w t. */
    @ParameterizedTest
    @ValueSource(doubles = {200e-6, -120e-6, 3e-9})
    void aSkewBetweenChannelsGivesThePowerErrorOfItsPhaseUntilItIsTakenOut(double skew) {
        WaveformFile file = ScopeTable.file(folder, "time,CH1,CH2", t -> sine(t, 325, 1, 0), t -> current(t - skew));
        String plain = "line.voltage=CH1,line.current=CH2";
        double wrong = 325 * 0.1 / 2 * Math.cos(0.3 + 2 * Math.PI * 50 * skew);
        assertThat(value(report(file, plain), "line.power.mean")).isCloseTo(wrong, within(2e-3));
        String nanoseconds = Math.round(skew * 1e9) + "ns";
        assertThat(value(report(file, plain + "@" + nanoseconds), "line.power.mean"))
                .isCloseTo(POWER, within(2e-3));
    }

    @Test
    void lessThanAWholePeriodGivesNoMeans() {
        WaveformFile file = ScopeTable.file(
                folder, "time,voltage (V),current (A)", t -> sine(0.09 * t, 325, 1, 0), t -> sine(0.09 * t, 0.1, 1, 0));
        CaptureReport report = report(file, "");
        for (String name : List.of("line.voltage.rms", "line.current.rms", "line.power.mean", "line.power_factor")) {
            assertThat(figure(report, name).present()).as(name).isFalse();
        }
    }

    /** 20 to 24.9 ms hold a whole period of 50 Hz, though none of 40 Hz. */
    @ParameterizedTest
    @ValueSource(ints = {400, 405, 440, 480, 498})
    void oneWholePeriodIsEnoughForEveryMean(int steps) {
        CaptureReport report = report(rows(IntStream.rangeClosed(0, steps), 50e-6), "");
        assertThat(value(report, "line.frequency")).isCloseTo(50, within(0.02));
        assertThat(value(report, "line.voltage.rms")).isCloseTo(325 / Math.sqrt(2), within(0.05));
        assertThat(value(report, "line.current.rms")).isCloseTo(RMS, within(2e-5));
        assertThat(value(report, "line.power.mean")).isCloseTo(POWER, within(5e-3));
    }

    /** The light of a lamp that follows the rectified line and goes dark: 10 to 11.5 ms hold one period, or hardly more. */
    @ParameterizedTest
    @ValueSource(ints = {200, 210, 230})
    void theFrequencyOfOnePeriodOfLightThatIsNoSineIsNotGuessed(int steps) {
        CaptureReport report = report(
                light(
                        IntStream.rangeClosed(0, steps),
                        t -> Math.max(0, Math.abs(Math.sin(2 * Math.PI * 50 * t)) - 0.2)),
                "");
        assertThat(figure(report, "light.flicker.frequency").present()).isFalse();
        assertThat(report.sections().get(0).limits())
                .allMatch(limit -> limit.verdict().equals("no verdict"));
    }

    @Test
    void lightOfTooFewPointsInAPeriodHasNoFigureOfFlicker() {
        CaptureReport report =
                report(light(IntStream.rangeClosed(0, 100).map(k -> 40 * k), t -> 60 + 24 * sine(t, 1, 2, 0.7)), "");
        assertThat(figure(report, "light.flicker.frequency").note())
                .isEqualTo("too few points in a period of the light");
    }

    @ParameterizedTest
    @ValueSource(ints = {300, 360, 390, 398})
    void lessThanOnePeriodIsNotTakenForOne(int steps) {
        assertThat(figure(report(rows(IntStream.rangeClosed(0, steps), 50e-6), ""), "line.voltage.rms")
                        .note())
                .isEqualTo("the window holds no whole period");
    }

    @Test
    void lightBelowZeroHasNoFlickerButAnOffset() {
        CaptureReport report =
                report(ScopeTable.file(folder, "time,light", t -> 5 + 24 * Math.sin(2 * Math.PI * 100 * t)), "");
        assertThat(figure(report, "light.flicker.percent").note())
                .startsWith("it goes below zero: offset of the sensor?");
        assertThat(figure(report, "light.flicker.index").present()).isFalse();
    }

    @Test
    void lightThatComesOnWithinTheRecordIsRemarked() {
        CaptureReport report = report(
                ScopeTable.file(
                        folder, "time,light", t -> Math.min(1, t / 0.08) * (60 + 24 * Math.sin(2 * Math.PI * 100 * t))),
                "");
        assertThat(report.remarks())
                .singleElement()
                .asString()
                .startsWith("light is not steady: mean ")
                .endsWith(" in the last; choose an interval with --from and --to");
    }

    @Test
    void aCurrentThatDiesAwayIsRemarked() {
        WaveformFile file = ScopeTable.file(
                folder, "time,voltage (V),current (A)", t -> sine(t, 325, 1, 0), t -> Math.exp(-20 * t) * current(t));
        assertThat(report(file, "").remarks())
                .singleElement()
                .asString()
                .startsWith("line.current is not steady: rms ")
                .endsWith(" in the last; choose an interval with --from and --to");
    }

    @Test
    void aStretchBehindTheRecordIsRefused() {
        WaveformFile file = lamp("time,voltage (V),current (A)", 1);
        assertThatThrownBy(() -> Capture.report(file, Recognition.of(file), 5, Double.POSITIVE_INFINITY))
                .isInstanceOf(UserFault.class)
                .hasMessageStartingWith("scope.csv: the measured interval is empty, found '5 s to 100 ms', ")
                .hasMessageContaining("allowed: 0 s to 100 ms");
    }

    /** A hole of 23 ms gave 236 V, 69 mA and 50.07 Hz. */
    @Test
    void noFigureIsTakenAcrossAHole() {
        WaveformFile file = rows(IntStream.rangeClosed(0, 2000).filter(k -> k <= 640 || k >= 1100), 50e-6);
        assertThatThrownBy(() -> report(file, ""))
                .isInstanceOf(UserFault.class)
                .hasMessage("scope.csv: no sample from 32 ms to 55 ms, step 50.0 µs elsewhere; "
                        + "choose an interval without gaps with --from and --to");
        CaptureReport behind = Capture.report(file, Recognition.of(file), 0.055, 0.1);
        assertThat(value(behind, "line.voltage.rms")).isCloseTo(325 / Math.sqrt(2), within(0.02));
        assertThat(behind.remarks()).isEmpty();
    }

    @Test
    void oneLostRowOfTwentyInAPeriodIsSaidAndChangesLittle() {
        CaptureReport report = report(rows(IntStream.rangeClosed(0, 200).filter(k -> k != 77), 1e-3), "");
        assertThat(value(report, "line.voltage.rms")).isCloseTo(325 / Math.sqrt(2), within(0.3));
        assertThat(report.remarks())
                .containsExactly("no sample from 76 ms to 78 ms, step 1.00 ms elsewhere: bridged by straight lines");
    }

    @Test
    void twoPointsInALinePeriodGiveNoMeans() {
        assertNoMeans(rows(IntStream.rangeClosed(0, 100), 10e-3));
    }

    @Test
    void timesWithTooFewDigitsGiveNoMeans() {
        assertNoMeans(table(IntStream.rangeClosed(0, 2000), 50e-6, "%.2f"));
    }

    private void assertNoMeans(WaveformFile file) {
        CaptureReport report = report(file, "");
        for (String name : List.of("line.voltage.rms", "line.current.rms", "line.power.mean", "line.power_factor")) {
            assertThat(figure(report, name).note()).as(name).isEqualTo("too few points in a line period");
        }
        assertThat(report.sections().get(0).limits()).isEmpty();
    }

    /** The rectified current of an LED string repeats twice in a line period: no line draws it. */
    @Test
    void aWaveformWithoutAFundamentalIsNoLine() {
        WaveformFile file = ScopeTable.file(
                folder,
                "time,U_LED (V),I_LED (A)",
                t -> 152 + 3 * Math.sin(2 * Math.PI * 100 * t),
                t -> 0.061 + 0.004 * Math.sin(2 * Math.PI * 100 * t));
        CaptureReport report = report(file, "line.voltage=U_LED,line.current=I_LED");
        assertThat(figure(report, "line.frequency").note()).isEqualTo("no dominant frequency");
        assertThat(report.sections().get(0).limits()).isEmpty();
    }

    /** 50 A on one point of 50 us: half of the triangle of two steps lies above half its height. */
    @Test
    void aPeakOnASinglePointIsSaidWithItsWidth() {
        WaveformFile file = ScopeTable.file(
                folder,
                "time,voltage (V),current (A)",
                t -> sine(t, 325, 1, 0),
                t -> Math.abs(t - 0.05) < 1e-6 ? 50 : current(t));
        assertThat(report(file, "").remarks())
                .anySatisfy(remark -> assertThat(remark)
                        .startsWith("the greatest line.current, 50.0 A at 50 ms, is a single point, 50.")
                        .endsWith(" µs wide at half its height: the figures depend on that point"));
    }

    @Test
    void whatTheInstrumentCutsOffIsRemarked() {
        WaveformFile file = ScopeTable.file(
                folder,
                "time,voltage (V),light",
                t -> Math.max(-250, Math.min(250, sine(t, 325, 1, 0))),
                t -> Math.min(75, 60 + 24 * Math.sin(2 * Math.PI * 100 * t)));
        assertThat(report(file, "").remarks())
                .containsExactly(
                        "line.voltage has exactly the same extreme value in 44 % of the points: clipped by the instrument?",
                        "light has exactly the same extreme value in 28 % of the points: clipped by the instrument?");
    }

    @Test
    void aStretchLongerThanTheRecordIsSaid() {
        WaveformFile file = lamp("time,voltage (V),current (A)", 1);
        CaptureReport report = Capture.report(file, Recognition.of(file), 0.02, 0.2);
        assertThat(report.remarks())
                .containsExactly("asked 20 ms to 200 ms, got 20 ms to 100 ms: the record ends there");
        assertThat(Capture.report(file, Recognition.of(file), 0.02, 0.1).remarks())
                .isEmpty();
    }

    @Test
    void aVoltageThatComesOnWithinTheRecordIsRemarked() {
        WaveformFile file = ScopeTable.file(folder, "time,voltage (V)", t -> t < 0.03 ? 0 : sine(t, 325, 1, 0));
        assertThat(report(file, "").remarks())
                .containsExactly("line.voltage is not steady: rms 0 V in line period 1, 230 V in the last; "
                        + "choose an interval with --from and --to");
    }

    @Test
    void aDipBetweenSoundPeriodsIsRemarked() {
        WaveformFile file =
                ScopeTable.file(folder, "time,voltage (V)", t -> (t > 0.04 && t < 0.06 ? 0.4 : 1) * sine(t, 325, 1, 0));
        assertThat(report(file, "").remarks())
                .containsExactly("line.voltage is not steady: rms 91.9 V in line period 3, 230 V in the last; "
                        + "choose an interval with --from and --to");
    }

    /** The rms of a sine of 24 about its mean is 17. */
    @Test
    void lightThatStopsToSwingAtTheSameMeanIsRemarked() {
        WaveformFile file =
                ScopeTable.file(folder, "time,light", t -> 60 + (t < 0.05 ? 24 * Math.sin(2 * Math.PI * 100 * t) : 0));
        assertThat(report(file, "").remarks())
                .singleElement()
                .asString()
                .startsWith("light is not steady: rms swing 16.97");
    }

    @Test
    void aRecordOfOneInstantIsRefused() throws IOException {
        WaveformFile file = WaveformFile.open(Files.writeString(folder.resolve("edge.csv"), "time,light\n3,1\n3,2\n"));
        assertThatThrownBy(() -> report(file, ""))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("the measured interval is empty");
    }

    @Test
    void flickerOfLightIsJudgedAtItsFrequency() {
        WaveformFile file = ScopeTable.file(folder, "time,light", t -> 2 + 0.2 * Math.sin(2 * Math.PI * 100 * t));
        CaptureReport report = report(file, "");
        assertThat(value(report, "light.flicker.frequency")).isCloseTo(100, within(0.01));
        assertThat(value(report, "light.flicker.percent")).isCloseTo(10, within(0.02));
        assertThat(value(report, "light.flicker.index")).isCloseTo(0.1 / Math.PI, within(1e-4));
        List<CaptureLimit> limits = report.sections().get(0).limits();
        assertThat(limits).extracting(CaptureLimit::verdict).containsExactly("not kept", "not kept");
        assertThat(limits.get(0).text()).endsWith(" %, limit 8.00 %");
    }

    @Test
    void constantLightHasNoFrequencyAndNoVerdict() {
        CaptureReport report = report(ScopeTable.file(folder, "time,light", t -> 2), "");
        assertThat(report.sections().get(0).limits())
                .containsExactly(new CaptureLimit("IEEE 1789-2015", "no verdict", "no dominant frequency"));
    }

    @Test
    void columnsThatSayNothingOfThemselvesMustBeMapped() {
        WaveformFile file = ScopeTable.file(folder, "time,CH1,CH2", t -> 1, t -> 2);
        assertThatThrownBy(() -> Recognition.of(file))
                .isInstanceOf(UserFault.class)
                .hasMessage(
                        "the columns cannot be identified, found 'CH1, CH2'; map it, as in --map line.voltage='CH1'");
    }

    @Test
    void twoColumnsThatWouldDoAreNotGuessedBetween() {
        WaveformFile file = ScopeTable.file(folder, "time,CH1 (V),CH2 (V)", t -> 1, t -> 2);
        assertThatThrownBy(() -> Recognition.of(file))
                .isInstanceOf(UserFault.class)
                .hasMessage("which column is line.voltage cannot be identified, found 'CH1, CH2'; "
                        + "map it, as in --map line.voltage='CH1'");
    }

    @Test
    void columnsOfOneNameAreCalledByTheirPlaces() {
        WaveformFile file = ScopeTable.file(folder, "Second,Value,Value", t -> sine(t, 325, 1, 0), t -> current(t));
        assertThatThrownBy(() -> Recognition.of(file))
                .hasMessageEndingWith("found 'column 2, column 3'; map it, as in --map line.voltage='column 2'");
        assertThatThrownBy(() -> report(file, "line.voltage=Value"))
                .hasMessageContaining("allowed: column 2, column 3");
        CaptureReport report = report(file, "line.voltage=column 2,line.current=column 3");
        assertThat(value(report, "line.power.mean")).isCloseTo(POWER, within(2e-3));
    }

    @Test
    void aColumnThatIsNotThereIsToldWithItsNearest() {
        WaveformFile file = ScopeTable.file(folder, "time,CH1,CH2", t -> 1, t -> 2);
        assertThatThrownBy(() -> report(file, "light=CH22"))
                .isInstanceOf(UserFault.class)
                .hasMessage("--map: the column is missing or not unique for light, found 'CH22', "
                        + "allowed: CH1, CH2; did you mean 'CH2'?");
    }

    private static double current(double time) {
        return sine(time, 0.1, 1, 0.3) + sine(time, 0.02, 3, 0.9);
    }

    /** Light at chosen multiples of 50 us. */
    private WaveformFile light(IntStream numbers, DoubleUnaryOperator wave) {
        StringBuilder text = new StringBuilder("time,light\n");
        numbers.mapToDouble(k -> k * 50e-6)
                .forEach(t -> text.append(String.format(Locale.ROOT, "%.6f,%.9e%n", t, wave.applyAsDouble(t))));
        return opened(text);
    }

    private WaveformFile rows(IntStream numbers, double step) {
        return table(numbers, step, "%.6f");
    }

    /** The lamp at chosen points, a little off the zero crossing. */
    private WaveformFile table(IntStream numbers, double step, String timeForm) {
        StringBuilder text = new StringBuilder("time,voltage (V),current (A)\n");
        numbers.forEach(k -> text.append(String.format(
                Locale.ROOT,
                timeForm + ",%.9e,%.9e%n",
                k * step,
                sine(k * step + 3e-4, 325, 1, 0),
                current(k * step + 3e-4))));
        return opened(text);
    }

    private WaveformFile opened(CharSequence text) {
        try {
            return WaveformFile.open(Files.writeString(folder.resolve("scope.csv"), text));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private WaveformFile lamp(String header, double gain) {
        return ScopeTable.file(folder, header, t -> sine(t, 325, 1, 0), t -> gain * current(t));
    }

    private static CaptureReport report(WaveformFile file, String map) {
        List<Mapping> mappings = map.isEmpty() ? Recognition.of(file) : MappingText.read(map, CaptureQuantity.words());
        return Capture.report(file, mappings, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private static double value(CaptureReport report, String name) {
        return figure(report, name).value();
    }

    private static Measured figure(CaptureReport report, String name) {
        return report.sections().stream()
                .flatMap(section -> section.figures().stream())
                .filter(figure -> figure.name().equals(name))
                .map(CaptureFigure::value)
                .findFirst()
                .orElseThrow();
    }
}
