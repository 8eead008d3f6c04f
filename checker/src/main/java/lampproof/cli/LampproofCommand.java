package lampproof.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import lampproof.report.Style;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The common part of all commands: the two streams and their style. */
@Command
abstract class LampproofCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    PrintWriter out() {
        return spec.commandLine().getOut();
    }

    PrintWriter err() {
        return spec.commandLine().getErr();
    }

    /** Colours on a terminal only, and none if NO_COLOR is set. */
    Style style() {
        return spec.commandLine().getColorScheme().ansi().enabled() ? Style.COLOURED : Style.PLAIN;
    }

    void print(String text) {
        out().print(text);
        out().flush();
    }
}
