package lampproof.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lampproof.deck.RunFolder;
import lampproof.measure.LoggedMeasure;
import lampproof.measure.Mean;
import lampproof.measure.MeanProduct;
import lampproof.measure.MeasurementPass;
import lampproof.measure.Peak;
import lampproof.measure.RootMeanSquare;
import lampproof.measure.Window;
import lampproof.prediction.DeckKind;
import lampproof.prediction.PredictedDesign;
import lampproof.spec.SpecReader;
import lampproof.waveform.file.WaveformFile;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ten recorded runs measured three times: by lampproof, by the simulator's own {@code meas}, and once more here straight
 * from the rows, by another algorithm.
 */
class RemeasuredRunsTest {

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource({
        "step-down, boundary, 230",
        "step-down, peak-current, 230",
        "step-down, fixed-off-time, 230",
        "step-down, boundary, 120",
        "step-down, fixed-off-time, 240",
        "step-up, boundary, 230",
        "step-up, peak-current, 230",
        "step-up, fixed-off-time, 230",
        "step-up, boundary, 120",
        "step-up, boundary, 240"
    })
    void threeWaysOfMeasuringAgree(String topology, String law, int line) throws Exception {
        Path simulator = Lampproof.simulatorOrSkip();
        PredictedDesign design =
                PredictedDesign.of(SpecReader.read(new StringReader(spec(topology, law, line)), "spec"));
        RunFolder run = new RunFolder(folder);
        run.writeDecks(design);
        double stop = 40 / design.solution().crestStage().pace().leastFrequency();
        Window window = Window.of(0.25 * stop, 0.75 * stop);
        addMeasures(run.deck(DeckKind.CREST), window);
        Path log = simulated(simulator);
        Path table = run.table(DeckKind.CREST);
        Map<String, Double> measured = measured(table, window);
        Map<String, Double> again = new Rows(table).figures(window);
        again.forEach((name, value) ->
                assertThat(measured.get(name)).as(name).isCloseTo(value, within(1e-9 * Math.abs(value))));
        List<LoggedMeasure> logged = LoggedMeasure.of(Files.readString(log));
        measured.forEach((name, value) -> assertThat(logged)
                .filteredOn(measure -> measure.name().equals(name))
                .singleElement()
                .satisfies(measure -> assertThat(measure.result().value())
                        .as(name)
                        .isCloseTo(value, within(1e-3 * Math.abs(value)))));
    }

    /** Straight from the simulator: lampproof would refuse means whose window the simulator stretched to its next step. */
    private Path simulated(Path simulator) throws IOException, InterruptedException {
        Path log = folder.resolve("crest.log");
        int exitCode = new ProcessBuilder(simulator.toString(), "-b", "crest.cir")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start()
                .waitFor();
        assertThat(exitCode).isZero();
        return log;
    }

    private static String spec(String topology, String law, int line) {
        boolean stepUp = topology.equals("step-up");
        return "quantity,min,typ,max,unit,note\n"
                + "driver.topology,," + topology + ",,,\ndriver.control,," + law + ",,,\n"
                + "line.voltage,," + line + ",,V,\nline.frequency,,50,,Hz,\n"
                + "string.voltage,," + (stepUp ? 1.85 * line : 33) + ",,V,\n"
                + "string.current,," + (stepUp ? 16.7 : 210) + ",,mA,\n";
    }

    private static void addMeasures(Path deck, Window window) throws IOException {
        String range = String.format(Locale.ROOT, " from=%.12e to=%.12e\n", window.start(), window.end());
        String lines = "let line_power = line_voltage * line_current\n"
                + "meas tran rms rms inductor_current" + range
                + "meas tran mean avg string_current" + range
                + "meas tran power avg line_power" + range
                + "meas tran peak max inductor_current" + range;
        String text = Files.readString(deck);
        assertThat(text).contains("\nquit 0\n.endc");
        Files.writeString(deck, text.replace("\nquit 0\n.endc", "\n" + lines + "quit 0\n.endc"));
    }

    private static Map<String, Double> measured(Path table, Window window) {
        MeasurementPass pass = new MeasurementPass();
        RootMeanSquare rms = pass.add(new RootMeanSquare(window, pass.channel("inductor_current")));
        Mean mean = pass.add(new Mean(window, pass.channel("string_current")));
        MeanProduct power =
                pass.add(new MeanProduct(window, pass.channel("line_voltage"), pass.channel("line_current")));
        Peak peak = pass.add(new Peak(window, pass.channel("inductor_current")));
        pass.over(WaveformFile.open(table));
        return Map.of(
                "rms", rms.result().value(),
                "mean", mean.result().value(),
                "power", power.result().value(),
                "peak", peak.result().value());
    }
}
