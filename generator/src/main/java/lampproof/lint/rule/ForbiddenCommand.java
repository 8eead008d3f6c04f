package lampproof.lint.rule;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.Command;
import lampproof.lint.netlist.Model;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;

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
    private static final Set<String> VARIABLES = Set.of("unixcom", "editor", "sourcepath", "modpath", "rawfile");

    @Override
    public String name() {
        return "forbidden-command";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Stream<LintFinding> commands = netlist.commands().stream().flatMap(command -> check(command).stream());
        Stream<LintFinding> processes = netlist.scopes()
                .flatMap(path -> path.scope().models().stream())
                .filter(model -> model.kind().is("d_process"))
                .map(Model::kind)
                .map(kind -> finding(kind.place(), "the model kind " + kind.text() + " runs a program"));
        return Stream.concat(commands, processes);
    }

    private Optional<LintFinding> check(Command command) {
        String name = command.name().lower().replaceFirst("^pre_", "");
        if (!ALLOWED.contains(name)) {
            return Optional.of(finding(
                    command.name().place(),
                    "the command " + command.name().text() + " is not one that a deck may give"));
        }
        return substitution(command).or(() -> variable(command));
    }

    /** Text between backquotes is run by the shell. */
    private Optional<LintFinding> substitution(Command command) {
        int at = command.statement().text().indexOf('`');
        return at < 0
                ? Optional.empty()
                : Optional.of(finding(command.statement().place(at, at + 1), "a backquote runs a program"));
    }

    private Optional<LintFinding> variable(Command command) {
        return command.isOneOf(Set.of("set", "pre_set"))
                ? command.arguments().stream()
                        .filter(word -> VARIABLES.contains(word.lower().replaceFirst("=.*", "")))
                        .findFirst()
                        .map(word -> finding(
                                word.place(), "the variable " + word.text() + " is not one that a deck may set"))
                : Optional.empty();
    }

    private LintFinding finding(Place place, String what) {
        return error(
                place,
                what,
                "a deck from somebody else can run programs and change files on this machine",
                "only commands that simulate and write results into the deck's folder");
    }
}
