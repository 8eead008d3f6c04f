package lampproof.lint.netlist;

import java.util.List;
import java.util.Optional;

/**
 * One element of a netlist.
 *
 * @param kind the kind of element
 * @param name its name
 * @param nodes the terminals that carry current, in order
 * @param controls the nodes that it only senses
 * @param model the model or subcircuit that it names
 * @param values the words that stand where values stand
 * @param parameters the named values
 * @param expression what a behavioural element computes
 * @param statement the statement at fault
 */
public record Element(
        ElementKind kind,
        Word name,
        List<Word> nodes,
        List<Word> controls,
        Optional<Word> model,
        List<Word> values,
        List<Parameter> parameters,
        Optional<Expression> expression,
        Statement statement) {

    public Element {
        nodes = List.copyOf(nodes);
        controls = List.copyOf(controls);
        values = List.copyOf(values);
        parameters = List.copyOf(parameters);
    }

    /** The named value {@code name}, letter case ignored. */
    public Optional<Parameter> parameter(String name) {
        return parameters.stream().filter(each -> each.name().is(name)).findFirst();
    }

    /** Whether the element sets a voltage between its first two nodes. */
    public boolean setsVoltage() {
        return switch (kind) {
            case VOLTAGE_SOURCE, VOLTAGE_CONTROLLED_VOLTAGE, CURRENT_CONTROLLED_VOLTAGE -> true;
            case BEHAVIOURAL_SOURCE -> expression.map(Expression::isVoltage).orElse(false);
            default -> false;
        };
    }

    /** Whether the element sets a current between its first two nodes. */
    public boolean setsCurrent() {
        return switch (kind) {
            case CURRENT_SOURCE, VOLTAGE_CONTROLLED_CURRENT, CURRENT_CONTROLLED_CURRENT -> true;
            case BEHAVIOURAL_SOURCE -> !setsVoltage();
            default -> false;
        };
    }
}
