package lampproof.cli;

import java.nio.file.Path;
import java.util.List;
import lampproof.deck.RunFolder;
import lampproof.simulator.SimulationOutcome;
import lampproof.simulator.Simulator;
import lampproof.unit.PlainNumber;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Simulates the decks of a run folder. */
@Command(
        description = "Runs the decks of a run folder in the simulator, all at the same time.",
        footer = {"", "Example: lampproof simulate run"})
final class SimulateCommand extends LampproofCommand {

    @Parameters(paramLabel = "RUN", description = "The run folder that 'lampproof deck' wrote.")
    private Path run;

    @Mixin
    private TimeLimit timeLimit;

    @Override
    public Integer call() {
        Simulator simulator = Simulator.locate(System.getenv());
        List<SimulationOutcome> outcomes =
                new DeckSimulation(simulator, timeLimit.seconds(), err()).run(List.of(new RunFolder(run)));
        outcomes.forEach(this::tell);
        boolean all = outcomes.stream().allMatch(SimulationOutcome::completed);
        return (all ? ExitCode.AGREES : ExitCode.NO_VERDICT).code();
    }

    private void tell(SimulationOutcome outcome) {
        if (outcome.completed()) {
            out().println(outcome.job().name() + ": simulated in " + PlainNumber.fixed(outcome.wallTime(), 1)
                    + " s with " + outcome.simulator());
        } else {
            err().println(outcome.finding().text());
        }
    }
}
