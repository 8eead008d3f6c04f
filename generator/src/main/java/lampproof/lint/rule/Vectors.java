package lampproof.lint.rule;

import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.Statement;

/** The results that a deck asks the simulator to keep, measure or write. */
final class Vectors {

    private static final Set<String> DIRECTIVES =
            Set.of(".save", ".print", ".plot", ".meas", ".measure", ".four", ".probe");
    private static final Set<String> COMMANDS =
            Set.of("save", "print", "plot", "meas", "wrdata", "write", "let", "fourier", "linearize", "asciiplot");
    private static final Pattern VECTOR = Pattern.compile(
            "(?<![\\w.])([vi])\\s{0,9}\\(\\s{0,9}([^(),*\\s]{1,200})\\s{0,9}(?:,\\s{0,9}([^(),*\\s]{1,200})\\s{0,9})?\\)",
            Pattern.CASE_INSENSITIVE);

    private Vectors() {}

    /**
     * A node or an element whose voltage or current is wanted.
     *
     * @param isCurrent whether the current through an element is wanted, not the voltage of a node
     * @param name the name of the node or element, in lower case
     * @param isWritten whether it goes into a file, so that the file depends on it
     * @param place where it is named
     */
    record Vector(boolean isCurrent, String name, boolean isWritten, Place place) {}

    static Stream<Vector> of(Netlist netlist) {
        Stream<Statement> written = netlist.directives().stream()
                .filter(directive -> directive.isOneOf(DIRECTIVES))
                .map(directive -> directive.statement());
        Stream<Statement> commanded = netlist.commands().stream()
                .filter(command -> command.isOneOf(COMMANDS))
                .map(command -> command.statement());
        return Stream.concat(written, commanded).flatMap(Vectors::of);
    }

    private static Stream<Vector> of(Statement statement) {
        Matcher matcher = VECTOR.matcher(statement.text());
        return matcher.results()
                .flatMap(found -> Stream.of(2, 3)
                        .filter(group -> found.group(group) != null)
                        .map(group -> vector(statement, found, group)));
    }

    private static Vector vector(Statement statement, MatchResult found, int group) {
        String name = found.group(group).toLowerCase(Locale.ROOT);
        Place place = statement.place(found.start(group), found.end(group));
        boolean written = statement.text().regionMatches(true, 0, "wr", 0, 2);
        return new Vector(found.group(1).equalsIgnoreCase("i"), name, written, place);
    }
}
