package lampproof.lint.netlist;

import java.util.List;

/**
 * A device model, {@code .model NAME KIND(...)}.
 *
 * @param name the model's name
 * @param kind the kind of device, for example {@code d} or {@code sw}
 * @param parameters its parameters
 * @param statement the statement at fault
 */
public record Model(Word name, Word kind, List<Parameter> parameters, Statement statement) {
    public Model {
        parameters = List.copyOf(parameters);
    }
}
