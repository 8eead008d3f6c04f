package lampproof.page;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleBiFunction;
import lampproof.choice.PartTable;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.Verdict;
import lampproof.design.Design;
import lampproof.design.Sizing;
import lampproof.prediction.Corner;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.prediction.Predictions;
import lampproof.prediction.Probe;
import lampproof.prediction.Solution;
import lampproof.spec.SpecReader;
import lampproof.waveform.file.WaveformFile;

/** Runs of small lamps to draw pages of. */
final class Runs {

    static final String STEP_UP = "driver.topology,,step-up,,,\nstring.voltage,,420,,V,\nstring.current,,16.7,,mA,\n";
    static final String STEP_DOWN = "driver.topology,,step-down,,,\nstring.voltage,,33,,V,\nstring.current,,210,,mA,\n";
    static final String ONE_LINE = "line.voltage,,230,,V,\n";
    static final String LINE_RANGE = "line.voltage,207,230,253,V,\n";

    private Runs() {}

    /** A run in which every simulated value is so many times the predicted one. */
    static RunRecord of(String rows, double factor, Map<DeckKind, WaveformFile> waves) {
        Design design = design(rows);
        return RunRecord.of(
                verdict(design, factor),
                design,
                PartTable.shipped(),
                waves,
                new RunRecord.Provenance("lampproof", "ngspice", "today"));
    }

    static RunRecord of(String rows) {
        return of(rows, 1, Map.of());
    }

    private static RunVerdict verdict(Design design, double factor) {
        List<Verdict> verdicts = Predictions.of(Solution.of(design.driver()), Corner.NOMINAL).stream()
                .map(one -> verdict(one, factor))
                .toList();
        return new RunVerdict("lamp", List.of(), verdicts, List.of());
    }

    private static Verdict verdict(Prediction one, double factor) {
        boolean settled = one.deck().isPresent();
        return new Verdict(
                one,
                settled ? OptionalDouble.of(factor * one.value()) : OptionalDouble.empty(),
                settled ? Outcome.AGREES : Outcome.PREDICTED_ONLY,
                "");
    }

    private static Design design(String rows) {
        String table = "quantity,min,typ,max,unit,note\nline.frequency,,50,,Hz,\n" + rows;
        return Sizing.of(SpecReader.read(new StringReader(table), "lamp.csv"));
    }

    /** A table with every probe. */
    static WaveformFile wave(Path file, double end, int rows, ToDoubleBiFunction<Probe, Double> value)
            throws IOException {
        StringBuilder table = new StringBuilder("time");
        for (Probe probe : Probe.values()) {
            table.append(',').append(probe.column());
        }
        for (int i = 0; i <= rows; i++) {
            double time = end * i / rows;
            table.append(String.format(Locale.ROOT, "%n%.9e", time));
            for (Probe probe : Probe.values()) {
                table.append(String.format(Locale.ROOT, ",%.9e", value.applyAsDouble(probe, time)));
            }
        }
        Files.writeString(file, table.append('\n'));
        return WaveformFile.open(file);
    }
}
