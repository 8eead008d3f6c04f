package lampproof.lint.rule;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Analysis;
import lampproof.lint.netlist.Command;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.Word;

/**
 * A command of the control block that may do more than simulate and write results.
 *
 * <p>What is not on the list is refused: the interpreter can run programs, load libraries, give commands other names and
 * hand unknown ones to the shell.
 */
final class ForbiddenCommand implements Rule {

    private static final Set<String> ALLOWED = Set.of(
            "ac",
            "alter",
            "altermod",
            "alterparam",
            "asciiplot",
            "break",
            "compose",
            "continue",
            "cross",
            "dc",
            "define",
            "delete",
            "destroy",
            "diff",
            "display",
            "disto",
            "dowhile",
            "echo",
            "else",
            "end",
            "fft",
            "foreach",
            "fourier",
            "if",
            "label",
            "let",
            "linearize",
            "listing",
            "meas",
            "noise",
            "op",
            "option",
            "plot",
            "print",
            "psd",
            "pz",
            "quit",
            "remcirc",
            "repeat",
            "reset",
            "reshape",
            "resume",
            "run",
            "rusage",
            "save",
            "sens",
            "set",
            "setplot",
            "setscale",
            "settype",
            "show",
            "showmod",
            "spec",
            "status",
            "step",
            "stop",
            "strcmp",
            "tf",
            "trace",
            "tran",
            "transpose",
            "undefine",
            "unlet",
            "unset",
            "version",
            "while",
            "wrdata",
            "write");
    private static final Pattern MODEL_FILE = Pattern.compile("(?i)[\\s=]['\"]?file|^[^=]*[$\"'\\\\{]");

    @Override
    public String name() {
        return "forbidden-command";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.commands().stream().flatMap(command -> check(command).stream());
    }

    private Optional<LintFinding> check(Command command) {
        if (Analysis.isDotLine(command)) {
            return Optional.of(dotLine(command.name()));
        }
        if (!ALLOWED.contains(command.name().lower())) {
            return Optional.of(finding(
                    command.name().place(),
                    "the command " + command.name().text() + " is not one that a deck may give"));
        }
        return substitution(command).or(() -> modelFile(command));
    }

    /** Text between backquotes is run by the shell, in whatever quotes it stands. */
    private Optional<LintFinding> substitution(Command command) {
        int at = command.statement().text().indexOf('`');
        return at < 0
                ? Optional.empty()
                : Optional.of(finding(command.statement().place(at, at + 1), "a backquote runs a program"));
    }

    /** {@code altermod name file=FILE} reads the model from a file that no rule has seen. */
    private Optional<LintFinding> modelFile(Command command) {
        Matcher file = MODEL_FILE.matcher(command.behind());
        return command.name().is("altermod") && file.find()
                ? Optional.of(finding(command.statement().whole(), "the command may read a model from a file"))
                : Optional.empty();
    }

    private LintFinding dotLine(Word name) {
        return error(
                name.place(),
                "the dot line " + name.text() + " stands in the control block",
                "the simulator knows no such command and runs no analysis: dot lines belong outside the control block",
                "the line before .control and run in the block, or the analysis without its dot");
    }

    private LintFinding finding(Place place, String what) {
        return error(
                place,
                what,
                "a deck from somebody else can run programs and change files on this machine",
                "only commands that simulate and write results into the deck's folder");
    }
}
