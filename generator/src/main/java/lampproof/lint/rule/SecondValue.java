package lampproof.lint.rule;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.ScopePath;
import lampproof.lint.netlist.Word;

/** A resistor, capacitor or inductor with a second word behind its value that is no model, as in {@code 22 k}. */
final class SecondValue implements Rule {

    private static final Set<ElementKind> PASSIVE =
            Set.of(ElementKind.RESISTOR, ElementKind.CAPACITOR, ElementKind.INDUCTOR);

    @Override
    public String name() {
        return "second-value";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.scopes()
                .flatMap(path -> path.scope().elements().stream()
                        .filter(element -> PASSIVE.contains(element.kind()))
                        .flatMap(element -> check(element, path).stream()));
    }

    private Optional<LintFinding> check(Element element, ScopePath path) {
        if (element.values().isEmpty()) {
            return Optional.empty();
        }
        return element.values().size() > 1
                ? Optional.of(element.values().get(1))
                        .filter(second -> !followsComma(element, second))
                        .map(second -> number(element, second))
                : element.model().filter(word -> !isKnown(word, path)).map(word -> word(element, word));
    }

    /** Two numbers parted by a comma are one value with a decimal comma, which another rule tells. */
    private static boolean followsComma(Element element, Word second) {
        return element.statement().text().charAt(second.offset() - 1) == ',';
    }

    private static boolean isKnown(Word name, ScopePath path) {
        return path.hasModel(name.text()) || path.parameter(name.text()).isPresent() || NotANumber.isPrint(name);
    }

    private LintFinding number(Element element, Word second) {
        return error(
                second.place(),
                element.name().text() + " has a second value, " + second.text(),
                "the simulator takes the last one, without a message",
                "one value");
    }

    private LintFinding word(Element element, Word word) {
        return error(
                word.place(),
                element.name().text() + " has the word " + word.text() + " behind its value",
                "the simulator takes it as a parameter that it does not know, and stops",
                "the value in one word; a rating or a material in a comment line");
    }
}
