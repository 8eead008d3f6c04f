package lampproof.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lampproof.cli.RunCheck.Result;
import lampproof.deck.RunFolder;
import lampproof.prediction.PredictedDesign;
import lampproof.simulator.SimulationOutcome;
import lampproof.simulator.Simulator;
import lampproof.spec.SpecReader;
import lampproof.subcircuit.PartModels;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The complete proof: predict, write the decks, simulate, check. */
@Command(
        description = {
            "Predicts, writes the decks, simulates them and checks every figure.",
            "Without SPEC it proves the two examples that ship with lampproof."
        },
        footer = {"", "Example: lampproof prove", "Example: lampproof prove lamp.csv -o run"})
final class ProveCommand extends LampproofCommand {

    private static final String DEFAULT_FOLDER = "lampproof-run";

    @Parameters(paramLabel = "SPEC", arity = "0..1", description = "The spec table.")
    private Path spec;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "RUN",
            defaultValue = DEFAULT_FOLDER,
            description = "The run folder; default: lampproof-run. Without SPEC each example has a folder in it.")
    private Path output;

    @Mixin
    private DeckChoice choice;

    @Mixin
    private TimeLimit timeLimit;

    @Mixin
    private PartsOption parts;

    @Mixin
    private Output printed;

    @Override
    public Integer call() {
        Simulator simulator = Simulator.locate(System.getenv());
        DeckSimulation simulating = new DeckSimulation(simulator, timeLimit.seconds(), err());
        Map<RunFolder, PredictedDesign> runs = predicted();
        PartModels models = spec == null ? PartModels.NONE : PartModels.of(SpecReader.read(spec), spec);
        runs.forEach((run, predicted) -> run.writeDecks(predicted, models));
        List<RunFolder> folders = List.copyOf(runs.keySet());
        List<SimulationOutcome> outcomes = simulating.run(folders);
        ExitCode worst =
                folders.stream().map(folder -> checked(folder, outcomes)).reduce(ExitCode.AGREES, ExitCode::orWorse);
        folders.forEach(folder -> out().println("Open next: " + folder.report()));
        return worst.code();
    }

    /** Everything is predicted before anything is written. */
    private Map<RunFolder, PredictedDesign> predicted() {
        Map<RunFolder, PredictedDesign> runs = new LinkedHashMap<>();
        if (spec != null) {
            runs.put(new RunFolder(output), choice.predicted(SpecReader.read(spec)));
        } else {
            ShippedExample.ALL.forEach(example ->
                    runs.put(new RunFolder(output.resolve(example.name())), choice.predicted(example.spec())));
        }
        return runs;
    }

    private ExitCode checked(RunFolder run, List<SimulationOutcome> outcomes) {
        Result checked = new RunCheck(run, outcomes).checked(parts.table());
        print(checked.text(style(), printed.verbosity()) + "\n");
        return ExitCode.of(checked.verdict().worst());
    }
}
