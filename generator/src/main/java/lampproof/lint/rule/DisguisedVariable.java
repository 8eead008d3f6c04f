package lampproof.lint.rule;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Command;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Statement;

/**
 * A variable whose name is put together from quotes, braces or backslashes, or the title of the deck used as a variable.
 *
 * <p>The simulator reads a command again after it has put in the variables. The title is the one text that no other rule
 * looks at, and in a command it may be a redirection or a program in backquotes.
 */
final class DisguisedVariable implements Rule {

    private static final Pattern TITLE = Pattern.compile("(?i)curplottitle");
    private static final Pattern JOINED = Pattern.compile("\\\\|\\$[&?#]?[\\w.]{1,99}\\{");
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*+\"|'[^']*+'|['\"]");
    private static final String BEFORE = " \t=(,[";
    private static final String BEHIND = " \t),]";

    @Override
    public String name() {
        return "disguised-variable";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.commands().stream()
                .filter(command -> command.statement().text().indexOf('$') >= 0)
                .flatMap(command -> check(command).stream());
    }

    private Optional<LintFinding> check(Command command) {
        Statement statement = command.statement();
        Matcher title = TITLE.matcher(statement.text());
        if (title.find()) {
            return Optional.of(finding(statement, title.start(), "the title of the deck is used as a variable"));
        }
        OptionalInt at = disguise(command);
        return at.isPresent()
                ? Optional.of(
                        finding(statement, at.getAsInt(), "a variable stands beside quotes, braces or backslashes"))
                : Optional.empty();
    }

    private static OptionalInt disguise(Command command) {
        String text = command.statement().text();
        Matcher joined = JOINED.matcher(text);
        if (joined.find()) {
            return OptionalInt.of(joined.start());
        }
        if (command.name().is("foreach") && text.indexOf('{') >= 0) {
            return OptionalInt.of(text.indexOf('{'));
        }
        return QUOTED.matcher(text)
                .results()
                .filter(quoted -> !isAlone(text, quoted))
                .mapToInt(MatchResult::start)
                .findFirst();
    }

    /** Double quotes stay in the word and join nothing; single ones are dropped, and what they part is joined. */
    private static boolean isAlone(String text, MatchResult quoted) {
        boolean pair = quoted.group().length() > 1;
        boolean before = quoted.start() == 0 || BEFORE.indexOf(text.charAt(quoted.start() - 1)) >= 0;
        boolean behind = quoted.end() == text.length() || BEHIND.indexOf(text.charAt(quoted.end())) >= 0;
        return pair && (quoted.group().startsWith("\"") || (before && behind));
    }

    private LintFinding finding(Statement statement, int at, String what) {
        return error(
                statement.place(at, at + 1),
                what,
                "the simulator reads the command again with the value in it, which may be a file to write or a program to run",
                "$name with blanks around it, or in double quotes");
    }
}
