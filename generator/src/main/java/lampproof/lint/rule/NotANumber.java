package lampproof.lint.rule;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.Model;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Parameter;
import lampproof.lint.netlist.Scope;
import lampproof.lint.netlist.Word;

/** The print of a calculation that had no result, in the place of a value. */
final class NotANumber implements Rule {

    private static final Pattern PRINT = Pattern.compile("(?i)[-+]?(nan|inf|infinity|\\d\\.#\\w+)|undefined|null");

    @Override
    public String name() {
        return "not-a-number";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Stream<Word> scopes = netlist.possibleScopes().flatMap(NotANumber::words);
        Stream<Word> directives = netlist.directives().stream()
                .filter(directive -> !directive.keyword().lower().startsWith(".s"))
                .flatMap(directive -> directive.words().stream());
        return Stream.concat(scopes, directives).filter(word -> isPrint(word)).map(this::finding);
    }

    static boolean isPrint(Word word) {
        return PRINT.matcher(word.text()).matches();
    }

    private static Stream<Word> words(Scope scope) {
        Stream<Word> elements = scope.elements().stream().flatMap(NotANumber::words);
        Stream<Word> models = scope.models().stream().map(Model::parameters).flatMap(NotANumber::values);
        return Stream.of(elements, models, values(scope.parameters())).flatMap(words -> words);
    }

    /** An undefined value looks like a model's name to the reader of a resistor. */
    private static Stream<Word> words(Element element) {
        Stream<Word> model = element.kind().needsModel() ? Stream.empty() : element.model().stream();
        return Stream.of(element.values().stream(), model, values(element.parameters()))
                .flatMap(words -> words);
    }

    private static Stream<Word> values(List<Parameter> parameters) {
        return parameters.stream().map(Parameter::value);
    }

    private LintFinding finding(Word word) {
        return error(
                word.place(),
                word.text() + " is no number",
                "the calculation behind this value failed; the simulator stops, or takes the word as a model's name",
                "the value, after correction of its calculation");
    }
}
