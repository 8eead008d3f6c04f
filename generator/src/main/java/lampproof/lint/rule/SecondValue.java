package lampproof.lint.rule;

import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Word;

/** A resistor, capacitor or inductor with two values. */
final class SecondValue implements Rule {

    private static final Set<ElementKind> PASSIVE =
            Set.of(ElementKind.RESISTOR, ElementKind.CAPACITOR, ElementKind.INDUCTOR);

    @Override
    public String name() {
        return "second-value";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.elements()
                .filter(element -> PASSIVE.contains(element.kind()))
                .filter(element -> element.values().size() > 1 && !hasComma(element))
                .map(this::finding);
    }

    /** Two numbers parted by a comma are one value with a decimal comma, which another rule tells. */
    private static boolean hasComma(Element element) {
        Word second = element.values().get(1);
        return element.statement().text().charAt(second.offset() - 1) == ',';
    }

    private LintFinding finding(Element element) {
        Word second = element.values().get(1);
        return error(
                second.place(),
                element.name().text() + " has a second value, " + second.text(),
                "the simulator takes the last one, without a message",
                "one value");
    }
}
