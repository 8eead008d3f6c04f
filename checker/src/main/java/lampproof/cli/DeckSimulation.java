package lampproof.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lampproof.deck.RunFolder;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.lint.Linter;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.NetlistReader;
import lampproof.lint.rule.LintFinding;
import lampproof.simulator.SimulationBatch;
import lampproof.simulator.SimulationJob;
import lampproof.simulator.SimulationOutcome;
import lampproof.simulator.Simulator;
import lampproof.spec.Amount;
import lampproof.spec.SpecReader;

/** Simulates the decks of one or more runs, all at the same time, after the linter has checked them. */
final class DeckSimulation {

    private final Simulator simulator;
    private final OptionalDouble timeLimit;
    private final PrintWriter err;

    /**
     * Prepares to simulate.
     *
     * @param timeLimit longest wall time of a simulation [s]; empty if the spec gives it
     */
    DeckSimulation(Simulator simulator, OptionalDouble timeLimit, PrintWriter err) {
        this.simulator = simulator;
        this.timeLimit = timeLimit;
        this.err = err;
    }

    /**
     * Runs every deck and prints the warnings of the simulator.
     *
     * @throws UserFault when a run has no deck, or a deck has an error that the linter finds
     */
    List<SimulationOutcome> run(List<RunFolder> runs) {
        List<SimulationJob> jobs = runs.stream().flatMap(this::jobs).toList();
        List<SimulationOutcome> outcomes = outcomes(jobs);
        outcomes.forEach(this::printRemarks);
        return outcomes;
    }

    private List<SimulationOutcome> outcomes(List<SimulationJob> jobs) {
        try (TerminalProgress progress = progress(jobs.size())) {
            return SimulationBatch.onAllCores(simulator).run(jobs, progress);
        }
    }

    private void printRemarks(SimulationOutcome outcome) {
        outcome.remarks().stream()
                .filter(remark -> !remark.startsWith("Note:"))
                .forEach(remark -> err.println(outcome.job().deck() + ": " + remark));
    }

    private static TerminalProgress progress(int runs) {
        return TerminalProgress.on(System.err, Terminal.isPresent(), runs);
    }

    private Stream<SimulationJob> jobs(RunFolder run) {
        List<Path> decks = run.decks().stream().map(run::deck).toList();
        if (decks.isEmpty()) {
            throw UserFault.badInput(Finding.of(
                    "the folder contains no deck",
                    run.path().toString(),
                    "write one with 'lampproof deck SPEC -o " + run.path() + "'"));
        }
        return decks.stream().map(deck -> job(run, deck));
    }

    private SimulationJob job(RunFolder run, Path deck) {
        Netlist netlist = NetlistReader.read(deck);
        List<LintFinding> findings = Linter.check(netlist);
        refuse(findings.stream().filter(LintFinding::isError).toList(), deck);
        findings.forEach(finding -> err.println(finding.text()));
        SimulationJob job = SimulationJob.of(deck, stopTime(netlist));
        OptionalDouble limit = timeLimit.isPresent() ? timeLimit : limitOfSpec(run);
        return limit.isPresent() ? job.withTimeLimit(limit.getAsDouble()) : job;
    }

    private void refuse(List<LintFinding> errors, Path deck) {
        if (!errors.isEmpty()) {
            errors.forEach(error -> err.println(error.text()));
            throw UserFault.badInput(
                    Finding.of("the deck has " + errors.size() + " faults, so it is not run", deck.toString(), ""));
        }
    }

    private static OptionalDouble limitOfSpec(RunFolder run) {
        return SpecReader.read(run.spec())
                .amount("decks.time_limit")
                .map(Amount::typical)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /**
     * The simulated time at which a deck ends [s].
     *
     * @throws UserFault when it has no stop time
     */
    static double stopTime(Netlist netlist) {
        return netlist.analyses().stream()
                .flatMap(analysis -> analysis.stopTime().stream().boxed())
                .findFirst()
                .orElseThrow(() -> UserFault.badInput(Finding.of(
                        "the deck has no transient analysis with a stop time",
                        netlist.file(),
                        "write .tran STEP STOP")));
    }
}
