package lampproof.cli;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The command {@code lampproof}: hands the arguments to the subcommand that they name. */
@Command(
        name = "lampproof",
        mixinStandardHelpOptions = true,
        versionProvider = BuildVersion.class,
        scope = ScopeType.INHERIT,
        description = "Predicts, simulates and proves the power supply inside a mains LED lamp.",
        optionListHeading = "%nOptions:%n",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        footer = {
            "",
            "Mains, the rectified bus and a long LED string can kill, and a driver without isolation has no safe side.",
            "A prediction or a simulation is no proof of safety or compliance."
        })
public final class Main {

    @Option(
            names = "--trace",
            scope = ScopeType.INHERIT,
            description = "Show the stack trace of a fault of lampproof itself.")
    private boolean trace;

    Main() {}

    /** Runs the command on the standard streams and exits with its code. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, Charset.defaultCharset());
        PrintWriter err = new PrintWriter(System.err, true, Charset.defaultCharset());
        System.exit(run(CommandLines.of(args), out, err, args));
    }

    /** Runs one command on the given streams and answers its exit code, whatever is thrown. */
    static int run(CommandLine lampproof, PrintWriter out, PrintWriter err, String... args) {
        FaultText faults = new FaultText();
        lampproof.setOut(out).setErr(err).setParameterExceptionHandler(faults).setExecutionExceptionHandler(faults);
        listExitCodes(lampproof);
        try {
            return lampproof.execute(args);
        } catch (Throwable fault) {
            return FaultText.of(fault, lampproof);
        }
    }

    /** Whether a fault of lampproof itself is to be shown with its stack trace. */
    boolean trace() {
        return trace;
    }

    private static void listExitCodes(CommandLine command) {
        command.getCommandSpec().usageMessage().exitCodeList(ExitCode.list());
        for (CommandLine subcommand : command.getSubcommands().values()) {
            listExitCodes(subcommand);
        }
    }
}
