package lampproof.cli;

import java.nio.file.Path;
import java.util.List;
import lampproof.lint.Linter;
import lampproof.lint.rule.LintFinding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Checks a netlist. */
@Command(
        description = "Finds errors that simulators silently accept, in a netlist or in every deck of a run folder.",
        footer = {"", "Example: lampproof lint mains.cir", "Example: lampproof lint run"})
final class LintCommand extends LampproofCommand {

    @Parameters(paramLabel = "FILE|RUN", description = "The netlist, or a folder with netlists NAME.cir.")
    private Path netlist;

    @Override
    public Integer call() {
        List<LintFinding> findings = Linter.check(netlist);
        findings.forEach(finding -> out().println(finding.text()));
        long errors = findings.stream().filter(LintFinding::isError).count();
        out().println(errors + " errors, " + (findings.size() - errors) + " warnings");
        return (errors > 0 ? ExitCode.BAD_INPUT : ExitCode.AGREES).code();
    }
}
