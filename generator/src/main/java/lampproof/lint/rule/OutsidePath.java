package lampproof.lint.rule;

import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Command;
import lampproof.lint.netlist.FileNames;
import lampproof.lint.netlist.Include;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;

/** A file that is read or written outside the deck's folder, or whose name is put together only when the deck runs. */
final class OutsidePath implements Rule {

    private static final Set<String> WRITERS = Set.of("wrdata", "write", "run");
    private static final Pattern NAME = Pattern.compile("\\s*+([^ \t]++(?:[ \t]++=)?+)");

    private static final Pattern HIDDEN = Pattern.compile("(?:^|/)\\.(?!/)");

    @Override
    public String name() {
        return "outside-path";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Stream<LintFinding> included = netlist.includes().stream()
                .filter(include -> include.outcome() == Include.Outcome.OUTSIDE)
                .map(Include::place)
                .map(place -> FileNames.mayLeadOutside(place.text()) ? finding(place) : outside(place));
        Stream<LintFinding> written = netlist.commands().stream()
                .filter(command -> command.isOneOf(WRITERS))
                .flatMap(command -> written(command).stream())
                .map(this::finding);
        return Stream.concat(included, written);
    }

    /**
     * The name up to the first blank, as the simulator reads it; blanks before an equals sign it drops. Double quotes, which
     * another rule refuses, are part of the name.
     */
    private static Optional<Place> written(Command command) {
        Matcher name = NAME.matcher(command.behind());
        if (!name.lookingAt()) {
            return Optional.empty();
        }
        String path = name.group(1);
        boolean quoted = path.startsWith("\"") && !command.name().is("run");
        int at = command.behindName();
        return quoted || FileNames.isWrittenAsNamed(path)
                ? Optional.empty()
                : Optional.of(command.statement().place(at + name.start(1), at + name.end(1)));
    }

    private LintFinding finding(Place place) {
        if (!FileNames.staysInside(place.text())) {
            return outside(place);
        }
        return HIDDEN.matcher(place.text()).find() ? hidden(place) : marked(place);
    }

    private LintFinding hidden(Place place) {
        return error(
                place,
                place.text() + " is the name of a hidden file",
                "programs read settings from such files: ngspice runs the commands of a .spiceinit in its folder",
                "a file name that begins with a letter");
    }

    private LintFinding marked(Place place) {
        return error(
                place,
                place.text() + " holds a mark that ngspice does not read as part of a file name",
                "the simulator reads or writes a file of another name, or none",
                "a file name of letters, digits, - and _");
    }

    private LintFinding outside(Place place) {
        return error(
                place,
                place.text() + " may lie outside the deck's folder",
                "a deck from somebody else can read or overwrite any file, and a copied run folder reads the wrong one",
                "a plain file name, and the file beside the deck");
    }
}
