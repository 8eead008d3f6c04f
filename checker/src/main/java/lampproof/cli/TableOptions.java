package lampproof.cli;

import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.ReadOptions.Decimal;
import picocli.CommandLine.Option;

/** The options for information that a table does not contain. */
final class TableOptions {

    /** A decimal mark that the user gives. */
    private enum Mark {
        point,
        comma
    }

    @Option(
            names = "--run",
            paramLabel = "NUMBER",
            description = "Number of the run to read in a file of several runs, counted from 1.")
    private Integer run;

    @Option(
            names = "--decimal",
            paramLabel = "MARK",
            description = "The decimal mark of a table in which it is ambiguous: ${COMPLETION-CANDIDATES}.")
    private Mark decimal;

    /**
     * The information from the user.
     *
     * @throws UserFault when the number of the run is below 1
     */
    ReadOptions readOptions() {
        if (run != null && run < 1) {
            throw UserFault.badInput(new Finding("invalid run", "--run", String.valueOf(run), "1 for the first", ""));
        }
        ReadOptions marked = decimal == null ? ReadOptions.NONE : ReadOptions.NONE.with(decimal());
        return run == null ? marked : marked.withRun(run);
    }

    private Decimal decimal() {
        return decimal == Mark.point ? Decimal.POINT : Decimal.COMMA;
    }
}
