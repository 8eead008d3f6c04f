package lampproof.cli;

import lampproof.report.Verbosity;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** The options for how much is printed. */
final class Output {

    /** One of the two. */
    private static final class Choice {

        @Option(names = "--all", description = "Print every figure, rule and trust check after the answer.")
        private boolean all;

        @Option(names = "--quiet", description = "Print one line.")
        private boolean quiet;
    }

    @ArgGroup
    private Choice choice;

    Verbosity verbosity() {
        if (choice == null) {
            return Verbosity.ANSWER;
        }
        if (choice.quiet) {
            return Verbosity.QUIET;
        }
        return choice.all ? Verbosity.ALL : Verbosity.ANSWER;
    }
}
