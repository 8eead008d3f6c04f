package lampproof.cli;

import java.io.PrintWriter;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Converts each fault to text on the error stream and an exit code. */
final class FaultText implements IParameterExceptionHandler, IExecutionExceptionHandler {

    /** Prints what is wrong with the command line, the nearest known word, and where to read more. */
    @Override
    public int handleParseException(ParameterException fault, String[] args) {
        CommandLine command = fault.getCommandLine();
        PrintWriter err = command.getErr();
        err.println(fault.getMessage());
        UnmatchedArgumentException.printSuggestions(fault, err);
        err.println("Try '" + command.getCommandSpec().qualifiedName() + " --help'.");
        return ExitCode.BAD_INPUT.code();
    }

    @Override
    public int handleExecutionException(Exception fault, CommandLine command, ParseResult parsed) {
        return of(fault, command);
    }

    /** Prints the message of what was thrown and returns its exit code. */
    static int of(Throwable fault, CommandLine command) {
        return fault instanceof UserFault userFault ? userFault(userFault, command.getErr()) : crash(fault, command);
    }

    private static int userFault(UserFault fault, PrintWriter err) {
        fault.findings().stream().map(Finding::text).forEach(err::println);
        if (fault.findings().size() > 1) {
            err.println(fault.findings().size() + " faults.");
        }
        return ExitCode.of(fault).code();
    }

    private static int crash(Throwable fault, CommandLine command) {
        PrintWriter err = command.getErr();
        boolean trace = ((RootCommand) command.getCommandSpec().root().userObject()).trace();
        String hint = trace ? "" : "; run it again with --trace to see where";
        err.println("This is a fault of lampproof itself: "
                + fault.toString().lines().findFirst().orElse("") + hint);
        if (trace) {
            fault.printStackTrace(err);
        }
        return ExitCode.CRASH.code();
    }
}
