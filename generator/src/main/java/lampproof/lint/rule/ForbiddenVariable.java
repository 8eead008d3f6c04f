package lampproof.lint.rule;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.lint.netlist.Command;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.Statement;

/**
 * A variable that names files or programs or changes how a deck is read, or that may come to be one of these because its name
 * is put together when the deck runs.
 *
 * <p>Variables are set by {@code set}, {@code option}, {@code foreach}, {@code strcmp} and {@code .options}, the last in any
 * branch of a conditional block.
 */
final class ForbiddenVariable implements Rule {

    private static final Set<String> SETTERS = Set.of("set", "option");
    private static final Set<String> NAMERS = Set.of("foreach", "strcmp");
    private static final Pattern NAME = Pattern.compile("\\s*+([A-Za-z_][\\w.#-]*+)(?=\\s|$)");
    private static final Pattern LIST = Pattern.compile("\\$(\\w++)(?!\\[\\d{1,9}\\])");
    private static final Pattern FORBIDDEN = Pattern.compile("(?i)(?<![\\w.])(?:"
            + "rawfile|measoutfile|sourcepath|inputdir|modpath|helppath|spicepath"
            + "|unixcom|editor|program|rprogram|rhost|remote_shell|lprps|lprplot5|hcopydev|display"
            + "|modelcard|modelline|substart|subend|subinvoke|noparse|nosubckt|auto_bridge\\w*+)(?!\\w)");
    /** In {@code .options}, a value of one plain word: certain not to be a name. A text in quotes is read word by word. */
    private static final Pattern VALUE = Pattern.compile(
            "(?<![^\\s,])[A-Za-z_]\\w*+\\s*+=\\s*+(?:\"([\\w.+-]++)\"|([\\w.+-]++))(?![^\\s,])(?!\\s*+=)");

    private static final Pattern UNSAFE = Pattern.compile("[`<>\\\\]");

    @Override
    public String name() {
        return "forbidden-variable";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Set<String> lists = commands(netlist, SETTERS)
                .flatMap(command -> Settings.of(command).all().stream())
                .filter(Settings.Setting::isList)
                .map(Settings.Setting::name)
                .collect(Collectors.toSet());
        Stream<LintFinding> set = commands(netlist, SETTERS).flatMap(command -> set(command, lists));
        Stream<LintFinding> named = commands(netlist, NAMERS).flatMap(command -> named(command).stream());
        Stream<LintFinding> options = netlist.statements().stream()
                .filter(statement -> statement.text().regionMatches(true, 0, ".opt", 0, 4))
                .flatMap(statement -> option(statement).stream());
        return Stream.of(set, named, options).flatMap(findings -> findings);
    }

    private static Stream<Command> commands(Netlist netlist, Set<String> names) {
        return netlist.commands().stream().filter(command -> command.isOneOf(names));
    }

    private Stream<LintFinding> set(Command command, Set<String> lists) {
        Settings settings = Settings.of(command);
        Stream<LintFinding> read = settings.all().stream().flatMap(each -> check(command, each, lists).stream());
        Stream<LintFinding> unread = settings.unread().stream()
                .mapToObj(at -> uncertain(
                        command.statement().place(at, command.statement().text().length())));
        return Stream.concat(read, unread);
    }

    private Optional<LintFinding> check(Command command, Settings.Setting setting, Set<String> lists) {
        Place place = command.statement().place(setting.from(), setting.to());
        if (FORBIDDEN.matcher(setting.name()).matches()) {
            return Optional.of(forbidden(place, setting.name()));
        }
        boolean spreads = !setting.isList() && named(setting.value()).anyMatch(lists::contains);
        return spreads ? Optional.of(uncertain(place)) : Optional.empty();
    }

    /** The variables whose whole value a value puts in, in lower case as the simulator reads the command. */
    private static Stream<String> named(String value) {
        return LIST.matcher(value).results().map(found -> found.group(1).toLowerCase(Locale.ROOT));
    }

    private Optional<LintFinding> named(Command command) {
        Matcher name = NAME.matcher(command.behind());
        if (!name.lookingAt()) {
            return Optional.of(uncertain(command.statement().whole()));
        }
        int at = command.behindName();
        return FORBIDDEN.matcher(name.group(1)).matches()
                ? Optional.of(forbidden(command.statement().place(at + name.start(1), at + name.end(1)), name.group(1)))
                : Optional.empty();
    }

    /** Quotes around a name change nothing, so they are not looked at. */
    private Optional<LintFinding> option(Statement statement) {
        String text = statement.text().replaceAll("[\"']", " ");
        Matcher name = FORBIDDEN.matcher(withoutValues(statement.text()).replaceAll("[\"']", " "));
        if (name.find()) {
            return Optional.of(forbidden(statement.place(name.start(), name.end()), name.group()));
        }
        Matcher mark = UNSAFE.matcher(text);
        return mark.find() ? Optional.of(uncertain(statement.place(mark.start(), mark.end()))) : Optional.empty();
    }

    private static String withoutValues(String text) {
        StringBuilder names = new StringBuilder(text);
        VALUE.matcher(text).results().forEach(value -> {
            int group = value.group(1) == null ? 2 : 1;
            names.replace(
                    value.start(group),
                    value.end(group),
                    "1".repeat(value.group(group).length()));
        });
        return names.toString();
    }

    private LintFinding forbidden(Place place, String variable) {
        return error(
                place,
                "the variable " + variable + " is not one that a deck may set",
                "a deck from somebody else can name files and programs of this machine with it, or hide lines from this check",
                "only the deck's own variables and those that choose how numbers and tables are written");
    }

    private LintFinding uncertain(Place place) {
        return error(
                place,
                "which variable this sets, or what it holds, is not certain before the deck runs",
                "a deck from somebody else can hide the name of a file or a program in this way",
                "name = value, the value one word, one text in quotes or a list ( a b ), without backslash, brace and backquote");
    }
}
