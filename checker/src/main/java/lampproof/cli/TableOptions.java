package lampproof.cli;

import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.waveform.ReadOptions;
import lampproof.waveform.ReadOptions.Decimal;
import picocli.CommandLine.Option;

/** The options for what a table does not contain. */
final class TableOptions {

    /** A mark that is said, never found. */
    private enum Mark {
        point,
        comma
    }

    @Option(
            names = "--run",
            paramLabel = "NUMBER",
            description = "Which run to read in a file of several, counted from 1.")
    private Integer run;

    @Option(
            names = "--decimal",
            paramLabel = "MARK",
            description = "The decimal mark where a table leaves it open: ${COMPLETION-CANDIDATES}.")
    private Mark decimal;

    /**
     * What the user knows.
     *
     * @throws UserFault when the number is that of no run
     */
    ReadOptions readOptions() {
        if (run != null && run < 1) {
            throw UserFault.badInput(
                    new Finding("this is no run", "--run", String.valueOf(run), "1 for the first", ""));
        }
        ReadOptions marked = decimal == null ? ReadOptions.NONE : ReadOptions.NONE.with(decimal());
        return run == null ? marked : marked.withRun(run);
    }

    private Decimal decimal() {
        return decimal == Mark.point ? Decimal.POINT : Decimal.COMMA;
    }
}
