package lampproof.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lampproof.capture.MappedTable;
import lampproof.capture.Mapping;
import lampproof.compare.DeckComparison;
import lampproof.compare.DeckVerdict;
import lampproof.compare.InstrumentComparison;
import lampproof.compare.RunVerdict;
import lampproof.deck.RunFolder;
import lampproof.design.Design;
import lampproof.design.Driver;
import lampproof.design.Sizing;
import lampproof.fault.UserFault;
import lampproof.file.WholeFile;
import lampproof.lint.netlist.Netlist;
import lampproof.page.ReportPage;
import lampproof.page.RunRecord;
import lampproof.prediction.DeckKind;
import lampproof.prediction.Prediction;
import lampproof.prediction.PredictionTable;
import lampproof.prediction.Probe;
import lampproof.prediction.RuleVerdict;
import lampproof.report.JunitReport;
import lampproof.report.RuleText;
import lampproof.report.Style;
import lampproof.report.VerdictTable;
import lampproof.report.VerdictText;
import lampproof.simulator.SimulationOutcome;
import lampproof.spec.SpecReader;
import lampproof.waveform.Hints;
import lampproof.waveform.WaveformFile;

/** Judges the waveforms of a run and leaves the verdicts in its folder. */
final class Checking {

    private final RunFolder run;
    private final Map<DeckKind, Path> waves;
    private final List<Mapping> mappings;
    private final Hints hints;
    private final List<SimulationOutcome> outcomes;
    private final ReadingProgress progress = ReadingProgress.on(System.err, Terminal.isThere());
    private final Map<DeckKind, WaveformFile> drawn = new EnumMap<>(DeckKind.class);

    /**
     * Prepares to check.
     *
     * @param waves waveform files given by hand; when there are any, a deck without a waveform is left out
     * @param mappings which column of an instrument's table of the mains deck is which probe; none for a simulator's
     * @param hints what the tables cannot tell of themselves
     */
    Checking(RunFolder run, Map<DeckKind, Path> waves, List<Mapping> mappings, Hints hints) {
        this(run, waves, mappings, hints, List.of());
    }

    /**
     * Prepares to check what was simulated just now.
     *
     * @param outcomes what became of the simulations
     */
    Checking(RunFolder run, List<SimulationOutcome> outcomes) {
        this(run, Map.of(), List.of(), Hints.NONE, outcomes);
    }

    private Checking(
            RunFolder run,
            Map<DeckKind, Path> waves,
            List<Mapping> mappings,
            Hints hints,
            List<SimulationOutcome> outcomes) {
        this.run = run;
        this.waves = waves;
        this.mappings = mappings;
        this.hints = hints;
        this.outcomes = outcomes;
    }

    /**
     * What was found.
     *
     * @param verdict what the simulations say
     * @param rules what rules say of the design
     */
    record Checked(RunVerdict verdict, List<RuleVerdict> rules) {

        /** Both for a reader. */
        String text(Style style) {
            return new VerdictText(style).text(verdict) + new RuleText(style).summary(rules);
        }
    }

    /**
     * Judges every deck that the predictions name and the design itself, and writes the verdicts.
     *
     * @throws UserFault when spec or predictions of the run cannot be read
     */
    Checked checked() {
        try (progress) {
            return judged();
        }
    }

    private Checked judged() {
        List<Prediction> predictions = PredictionTable.read(run.predictions());
        Design design = Sizing.of(SpecReader.read(run.spec()));
        List<DeckVerdict> decks = Arrays.stream(DeckKind.values())
                .filter(kind -> predictions.stream().anyMatch(prediction -> prediction.isSettledBy(kind)))
                .map(kind -> deck(kind, predictions, design.driver()))
                .toList();
        RunVerdict verdict = RunVerdict.of(name(), predictions, decks);
        WholeFile.write(run.verdict(), VerdictTable.text(verdict));
        WholeFile.write(run.junit(), JunitReport.text(verdict));
        RunRecord record = RunRecord.of(verdict, design, drawn, Provenance.of(run, outcomes));
        WholeFile.write(run.report(), ReportPage.html(record));
        return new Checked(verdict, record.rules());
    }

    private String name() {
        return run.path().toAbsolutePath().normalize().getFileName().toString();
    }

    private DeckVerdict deck(DeckKind kind, List<Prediction> predictions, Driver driver) {
        Optional<String> failure = failure(kind);
        if (failure.isPresent()) {
            return DeckVerdict.failed(kind, predictions, failure.get());
        }
        Path table = waves.getOrDefault(kind, run.table(kind));
        if (!Files.exists(table) && !waves.isEmpty() && !waves.containsKey(kind)) {
            return DeckVerdict.leftOut(kind, predictions, "no waveform was given for this deck");
        }
        if (kind == DeckKind.MAINS && !mappings.isEmpty()) {
            return instrument(table, predictions, driver);
        }
        try {
            Netlist deck = Netlist.read(run.deck(kind));
            double stopTime = Simulating.stopTime(deck);
            Optional<String> logged = LeftLog.failure(table, stopTime);
            return logged.isPresent()
                    ? DeckVerdict.failed(kind, predictions, logged.get())
                    : DeckComparison.of(kind, predictions, driver, open(kind, table, deck), stopTime);
        } catch (UserFault fault) {
            return DeckVerdict.failed(kind, predictions, fault.getMessage());
        }
    }

    /**
     * Judges the table of an instrument.
     *
     * @throws UserFault when it cannot be read or lacks a column that is mapped
     */
    private DeckVerdict instrument(Path table, List<Prediction> predictions, Driver driver) {
        WaveformFile file = WaveformFile.open(table, hints, progress);
        MappedTable mapped = MappedTable.named(file, mappings, quantity -> quantity.replace('.', '_'));
        Set<Probe> there = Arrays.stream(Probe.values())
                .filter(probe -> mapped.has(probe.dotted()))
                .collect(Collectors.toSet());
        return InstrumentComparison.of(predictions, driver, mapped, there);
    }

    private Optional<String> failure(DeckKind kind) {
        Path deck = run.deck(kind).toAbsolutePath().normalize();
        return outcomes.stream()
                .filter(outcome -> outcome.job().deck().equals(deck) && !outcome.completed())
                .map(outcome -> outcome.finding().text())
                .findFirst();
    }

    /** A table of the run itself must be younger than its deck; one that is given by hand may come from anywhere. */
    private WaveformFile open(DeckKind kind, Path table, Netlist deck) {
        String written = run.table(kind).getFileName().toString();
        Hints named = new Hints(deck.written(written), hints.decimal(), hints.run());
        WaveformFile file = WaveformFile.open(table, named, progress);
        if (!waves.containsKey(kind)) {
            file.requireNewerThan(run.deck(kind));
        }
        drawn.put(kind, file);
        return file;
    }
}
