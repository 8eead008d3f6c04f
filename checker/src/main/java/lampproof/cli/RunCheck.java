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
import lampproof.choice.PartTable;
import lampproof.compare.DeckComparison;
import lampproof.compare.DeckVerdict;
import lampproof.compare.InstrumentComparison;
import lampproof.compare.RunVerdict;
import lampproof.deck.RunFolder;
import lampproof.design.Design;
import lampproof.design.Driver;
import lampproof.design.Sizing;
import lampproof.fault.UserFault;
import lampproof.file.AtomicFile;
import lampproof.instrument.MappedTable;
import lampproof.instrument.Mapping;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.NetlistReader;
import lampproof.page.BillRows;
import lampproof.page.ReportPage;
import lampproof.page.RunRecord;
import lampproof.prediction.DeckKind;
import lampproof.prediction.LineCorners;
import lampproof.prediction.Prediction;
import lampproof.prediction.PredictionTable;
import lampproof.prediction.Probe;
import lampproof.report.JunitReport;
import lampproof.report.RunText;
import lampproof.report.Style;
import lampproof.report.Verbosity;
import lampproof.report.VerdictTable;
import lampproof.rule.RuleJudgement;
import lampproof.simulator.SimulationOutcome;
import lampproof.spec.SpecReader;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.file.WaveformFile;

/** Checks the waveforms of a run and writes the verdicts to its folder. */
final class RunCheck {

    private final RunFolder run;
    private final Map<DeckKind, Path> waves;
    private final List<Mapping> mappings;
    private final ReadOptions options;
    private final List<SimulationOutcome> outcomes;
    private final ReadProgress progress = ReadProgress.on(System.err, Terminal.isPresent());
    private final Map<DeckKind, WaveformFile> drawn = new EnumMap<>(DeckKind.class);

    /**
     * Prepares to check.
     *
     * @param waves waveform files given by hand; when there are any, a deck without a waveform is left out
     * @param mappings which column of an instrument's table of the mains deck is which probe; none for a simulator's
     * @param options information from the user about the tables
     */
    RunCheck(RunFolder run, Map<DeckKind, Path> waves, List<Mapping> mappings, ReadOptions options) {
        this(run, waves, mappings, options, List.of());
    }

    /**
     * Prepares to check simulations that have just run.
     *
     * @param outcomes the outcomes of the simulations
     */
    RunCheck(RunFolder run, List<SimulationOutcome> outcomes) {
        this(run, Map.of(), List.of(), ReadOptions.NONE, outcomes);
    }

    private RunCheck(
            RunFolder run,
            Map<DeckKind, Path> waves,
            List<Mapping> mappings,
            ReadOptions options,
            List<SimulationOutcome> outcomes) {
        this.run = run;
        this.waves = waves;
        this.mappings = mappings;
        this.options = options;
        this.outcomes = outcomes;
    }

    /**
     * The result of a check.
     *
     * @param verdict the verdicts on the figures
     * @param corners the predicted steady states
     * @param rules the verdicts on the rules
     */
    record Result(RunVerdict verdict, LineCorners corners, List<RuleJudgement> rules) {

        /** The result for a reader. */
        String text(Style style, Verbosity verbosity) {
            return new RunText(verdict.name(), style).checked(verdict, corners, rules, verbosity);
        }

        /** Rules and verdict for a reader who has the headline elsewhere. */
        String verdicts(Style style, Verbosity verbosity) {
            return verbosity == Verbosity.ANSWER
                    ? new RunText(verdict.name(), style).verdicts(verdict, rules)
                    : text(style, verbosity);
        }
    }

    /**
     * Judges every deck that the predictions name and the design itself, and writes the verdicts.
     *
     * @throws UserFault when spec or predictions of the run cannot be read
     */
    Result checked() {
        return checked(PartTable.shipped());
    }

    /**
     * The same with other part classes for the bill of materials.
     *
     * @throws UserFault when spec or predictions of the run cannot be read
     */
    Result checked(PartTable parts) {
        try (progress) {
            return judged(parts);
        }
    }

    private Result judged(PartTable parts) {
        List<Prediction> predictions = PredictionTable.read(run.predictions());
        Design design = Sizing.of(SpecReader.read(run.spec()));
        List<DeckVerdict> decks = Arrays.stream(DeckKind.values())
                .filter(kind -> predictions.stream().anyMatch(prediction -> prediction.isSettledBy(kind)))
                .map(kind -> deck(kind, predictions, design.driver()))
                .toList();
        RunVerdict verdict = RunVerdict.of(name(), predictions, decks);
        AtomicFile.write(run.verdict(), VerdictTable.text(verdict));
        AtomicFile.write(run.junit(), JunitReport.text(verdict));
        RunRecord record = RunRecord.of(verdict, design, parts, drawn, RunProvenance.of(run, outcomes));
        AtomicFile.write(run.bill(), BillRows.of(record).csv());
        AtomicFile.write(run.report(), ReportPage.html(record));
        return new Result(verdict, record.corners(), record.judgements());
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
            Netlist deck = NetlistReader.read(run.deck(kind));
            double stopTime = DeckSimulation.stopTime(deck);
            Optional<String> logged = SimulatorLogFile.failure(table, stopTime);
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
        WaveformFile file = WaveformFile.open(table, options, progress);
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

    /** A table in the run folder must be newer than its deck; a table given with --wave may have any origin. */
    private WaveformFile open(DeckKind kind, Path table, Netlist deck) {
        String written = run.table(kind).getFileName().toString();
        ReadOptions named = new ReadOptions(deck.written(written), options.decimal(), options.run());
        WaveformFile file = WaveformFile.open(table, named, progress);
        if (!waves.containsKey(kind)) {
            file.requireNewerThan(run.deck(kind));
        }
        drawn.put(kind, file);
        return file;
    }
}
