package lampproof.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The command {@code lampproof}: passes the arguments to the subcommand that they name. */
@Command(
        name = "lampproof",
        mixinStandardHelpOptions = true,
        versionProvider = BuildVersion.class,
        scope = ScopeType.INHERIT,
        description = "Predicts, simulates and checks the driver of a mains LED lamp.",
        optionListHeading = "%nOptions:%n",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        footer = {
            "",
            "Mains, the rectified bus and a long LED string can kill, and a driver without isolation has no safe side.",
            "A prediction or a simulation is no proof of safety or compliance."
        })
final class RootCommand {

    @Option(
            names = "--trace",
            scope = ScopeType.INHERIT,
            description = "Show the stack trace of a fault of lampproof itself.")
    private boolean trace;

    /** Whether a fault of lampproof itself is to be shown with its stack trace. */
    boolean trace() {
        return trace;
    }
}
