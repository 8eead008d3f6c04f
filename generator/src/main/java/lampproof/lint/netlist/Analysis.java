package lampproof.lint.netlist;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * An analysis that a deck asks for.
 *
 * @param kind its name without a dot, in lower case, for example {@code tran}
 * @param words the words behind it
 * @param statement the statement at fault
 */
public record Analysis(String kind, List<Word> words, Statement statement) {

    private static final Set<String> KINDS =
            Set.of("tran", "op", "ac", "dc", "noise", "tf", "pz", "sens", "disto", "pss", "sp");

    public Analysis {
        words = List.copyOf(words);
    }

    static List<Analysis> of(List<Directive> directives, List<Command> commands) {
        Stream<Analysis> written =
                directives.stream().map(each -> new Analysis(name(each.keyword()), each.words(), each.statement()));
        Stream<Analysis> commanded =
                commands.stream().map(each -> new Analysis(each.name().lower(), each.arguments(), each.statement()));
        return Stream.concat(written, commanded)
                .filter(analysis -> KINDS.contains(analysis.kind()))
                .toList();
    }

    /** Whether a command is an analysis written with a dot, which the simulator runs only outside the control block. */
    public static boolean isDotLine(Command command) {
        Word name = command.name();
        return name.text().startsWith(".") && KINDS.contains(name(name));
    }

    private static String name(Word keyword) {
        return keyword.text().substring(1).toLowerCase(Locale.ROOT);
    }

    /** Whether it is a transient analysis. */
    public boolean isTransient() {
        return kind.equals("tran");
    }

    /** Whether it starts from the given initial conditions and not from the operating point. */
    public boolean skipsOperatingPoint() {
        return isTransient() && words.stream().anyMatch(word -> word.is("uic"));
    }

    /** The simulated time at which a transient analysis ends [s]; empty when it states none as a plain number. */
    public OptionalDouble stopTime() {
        if (!isTransient() || words.size() < 2) {
            return OptionalDouble.empty();
        }
        return SpiceNumber.of(words.get(1).text()).stream()
                .mapToDouble(SpiceNumber::value)
                .filter(stop -> stop > 0)
                .findFirst();
    }
}
