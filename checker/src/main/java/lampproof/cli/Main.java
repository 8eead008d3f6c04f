package lampproof.cli;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import picocli.CommandLine;

/** Starts the command line. */
public final class Main {

    private Main() {}

    /** Runs the command on the standard streams and exits with its code. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, Charset.defaultCharset());
        PrintWriter err = new PrintWriter(System.err, true, Charset.defaultCharset());
        System.exit(run(CommandLines.of(args), out, err, args));
    }

    /** Runs one command on the given streams and returns its exit code, also after an exception. */
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

    private static void listExitCodes(CommandLine command) {
        command.getCommandSpec().usageMessage().exitCodeList(ExitCode.list());
        for (CommandLine subcommand : command.getSubcommands().values()) {
            listExitCodes(subcommand);
        }
    }
}
