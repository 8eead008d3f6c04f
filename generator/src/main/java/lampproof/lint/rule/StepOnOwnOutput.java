package lampproof.lint.rule;

import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.Expression;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Word;

/**
 * A behavioural voltage source that switches by its own output.
 *
 * <p>A node behind a resistor and a capacitor that the source drives is a state of the circuit and may be read.
 */
final class StepOnOwnOutput implements Rule {

    private static final Pattern STEP = Pattern.compile(
            "[?<>]|==|!=|\\b(?:if|ternary_fcn|u|sgn|floor|ceil|nint)\\s{0,9}\\(", Pattern.CASE_INSENSITIVE);

    @Override
    public String name() {
        return "step-on-own-output";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.elements().filter(Element::setsVoltage).flatMap(element -> check(element).stream());
    }

    private Optional<LintFinding> check(Element element) {
        return element.expression()
                .filter(expression -> STEP.matcher(expression.text()).find())
                .flatMap(expression -> ownOutput(element, expression))
                .map(read -> finding(element, read));
    }

    private static Optional<Word> ownOutput(Element element, Expression expression) {
        Stream<Word> voltages = expression.nodes().stream()
                .filter(read -> element.nodes().stream().anyMatch(node -> node.is(read.text())))
                .filter(read -> !read.is("0") && !read.is("gnd"));
        Stream<Word> currents = expression.currents().stream()
                .filter(read -> read.is(element.name().text()));
        return Stream.concat(voltages, currents).findFirst();
    }

    private LintFinding finding(Element element, Word read) {
        return warning(
                read.place(),
                element.name().text() + " is conditional on its own output, no smooth transition",
                "the iteration jumps between the branches and finds no solution: the time step shrinks to nothing",
                "a resistor and a capacitor behind the source, for example 1e3 ohm and 20e-12 F, and the node behind them here");
    }
}
