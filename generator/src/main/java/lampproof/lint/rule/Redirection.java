package lampproof.lint.rule;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Command;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Statement;

/**
 * A command whose output goes to a file or whose input comes from one.
 *
 * <p>ngspice looks for {@code >} and {@code <} in every command but the few of {@link #COMPARING}, with or without blanks and
 * in single quotes; it splits words at them. Only {@code >=} and {@code <=} behind a blank are words that compare. In double
 * quotes both are text, but a variable that holds such text redirects where it is used.
 */
final class Redirection implements Rule {

    private static final Set<String> COMPARING = Set.of("if", "while", "dowhile", "stop", "define");
    private static final Set<String> PRINTING = Set.of("echo", "plot", "asciiplot");
    private static final Pattern MARK = Pattern.compile("(?:(?<![ \t])[<>]|[<>](?!=))[<>&]{0,2}");
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*+\"");

    @Override
    public String name() {
        return "redirection";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.commands().stream()
                .filter(command -> !compares(command))
                .flatMap(command -> check(command).stream());
    }

    /** The simulator drops blanks before an equals sign, so a command that one follows is another one. */
    private static boolean compares(Command command) {
        return command.isOneOf(COMPARING) && !command.behind().stripLeading().startsWith("=");
    }

    private Optional<LintFinding> check(Command command) {
        Matcher mark = MARK.matcher(read(command));
        return mark.find() ? Optional.of(finding(command.statement(), mark.start(), mark.end())) : Optional.empty();
    }

    /** The command as far as it may redirect: what it only prints is blanked out where its quotes are certain. */
    private static String read(Command command) {
        String text = command.statement().text();
        boolean certain = command.isOneOf(PRINTING) && !text.matches("(?s)[^\\\\{}']*+[\\\\{}'].*");
        return certain
                ? QUOTED.matcher(text)
                        .replaceAll(quoted -> "\"".repeat(quoted.group().length()))
                : text;
    }

    private LintFinding finding(Statement statement, int from, int to) {
        return error(
                statement.place(from, to),
                "the command is redirected to or from a file",
                "a deck from somebody else can read or overwrite any file; a comparison here writes a file too",
                "wrdata or write with a plain file name; comparisons in if and while, elsewhere gt, lt, ge and le");
    }
}
