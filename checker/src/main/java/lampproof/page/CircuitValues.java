package lampproof.page;

import java.util.Map;
import java.util.stream.Collectors;
import lampproof.design.Design;

/**
 * The values that stand in the drawing of a circuit.
 *
 * @param texts the text of every value by its name in the spec, with underscores for points
 */
record CircuitValues(Map<String, String> texts) {

    static CircuitValues of(Design design) {
        return new CircuitValues(PartRows.of(design).parts().stream()
                .collect(Collectors.toMap(part -> part.name().replace('.', '_'), PartRows.Row::value)));
    }
}
