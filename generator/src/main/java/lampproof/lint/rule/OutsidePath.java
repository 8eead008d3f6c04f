package lampproof.lint.rule;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lampproof.lint.netlist.Command;
import lampproof.lint.netlist.FileNames;
import lampproof.lint.netlist.Include;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Parameter;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.Word;

/** A file that is read or written outside the deck's folder, or whose name is put together only when the deck runs. */
final class OutsidePath implements Rule {

    private static final Set<String> WRITERS = Set.of("wrdata", "write");
    private static final Set<String> FILES = Set.of("file", "input_file", "state_file");

    @Override
    public String name() {
        return "outside-path";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Stream<Place> included = netlist.includes().stream()
                .filter(include -> include.outcome() == Include.Outcome.OUTSIDE)
                .map(Include::place);
        Stream<Place> written = netlist.commands().stream()
                .flatMap(command -> Stream.concat(written(command), redirected(command)))
                .filter(OutsidePath::leadsOutside)
                .map(Word::place);
        return Stream.of(included, written, modelled(netlist))
                .flatMap(places -> places)
                .map(this::finding);
    }

    private static Stream<Word> written(Command command) {
        return command.isOneOf(WRITERS) ? command.arguments().stream().limit(1) : Stream.empty();
    }

    /** The words behind {@code >}, which may also stand in front of the name without a blank. */
    private static Stream<Word> redirected(Command command) {
        List<Word> words = command.arguments();
        Stream<Word> behind = IntStream.range(1, words.size())
                .filter(at -> words.get(at - 1).text().matches(">>?&?"))
                .mapToObj(words::get);
        Stream<Word> joined = words.stream().filter(word -> word.text().matches(">>?&?[/~.$\\\\].*"));
        return command.isOneOf(Set.of("if", "while", "let", "dowhile"))
                ? Stream.empty()
                : Stream.concat(behind, joined);
    }

    private static Stream<Place> modelled(Netlist netlist) {
        return netlist.scopes()
                .flatMap(path -> path.scope().models().stream())
                .flatMap(model -> model.parameters().stream())
                .filter(parameter -> FILES.contains(parameter.name().lower()))
                .map(Parameter::value)
                .filter(OutsidePath::leadsOutside)
                .map(Word::place);
    }

    private static boolean leadsOutside(Word word) {
        return FileNames.leadsOutside(word.text().replaceFirst("^>>?&?", ""));
    }

    private LintFinding finding(Place place) {
        return error(
                place,
                place.text() + " may lie outside the deck's folder",
                "a deck from somebody else can read or overwrite any file, and a copied run folder reads the wrong one",
                "a plain file name, and the file beside the deck");
    }
}
