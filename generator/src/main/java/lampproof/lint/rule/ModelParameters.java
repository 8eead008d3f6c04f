package lampproof.lint.rule;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The parameters that ngspice reads for each kind of model, from the table beside this class. */
final class ModelParameters {

    private static final String TABLE = "model-parameters.txt";
    private static final Map<String, Set<String>> KNOWN = table();

    private ModelParameters() {}

    /** The parameters of a kind of model, in lower case; empty for a kind that is not in the table. */
    static Optional<Set<String>> of(String kind) {
        return Optional.ofNullable(KNOWN.get(kind));
    }

    private static Map<String, Set<String>> table() {
        Map<String, Set<String>> table = new HashMap<>();
        List<String> kinds = List.of();
        for (String line : lines()) {
            int colon = line.indexOf(':');
            kinds = colon < 0 ? kinds : List.of(line.substring(0, colon).split(" "));
            List<String> names = List.of(line.substring(colon + 1).strip().split(" "));
            kinds.forEach(kind ->
                    table.computeIfAbsent(kind, absent -> new TreeSet<>()).addAll(names));
        }
        return table;
    }

    private static List<String> lines() {
        try (InputStream stream = ModelParameters.class.getResourceAsStream(TABLE)) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            return text.lines().filter(line -> !line.startsWith("#")).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
