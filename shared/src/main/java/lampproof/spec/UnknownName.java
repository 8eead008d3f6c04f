package lampproof.spec;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.fault.Finding;
import lampproof.fault.NearestName;

/** The finding for a name that the {@link Vocabulary} does not contain. */
public final class UnknownName {

    private UnknownName() {}

    /**
     * The finding for the name of a row, with the names of the same group and the nearest name.
     *
     * @param name the unknown name
     * @param where its place: file, line and cell
     */
    public static Finding ofRow(String name, String where) {
        return finding(name, where, Vocabulary.names());
    }

    /**
     * The finding for the name of a row or of a group.
     *
     * @param name the unknown name
     * @param where its place
     */
    public static Finding ofRowOrGroup(String name, String where) {
        return finding(
                name,
                where,
                Stream.of(Vocabulary.groups(), Vocabulary.names())
                        .flatMap(List::stream)
                        .toList());
    }

    private static Finding finding(String name, String where, List<String> known) {
        String next = NearestName.question(name, known);
        return new Finding("unknown name", where, name, neighbours(name), next);
    }

    /** The names of the same group, or the groups when there is no such group. */
    private static String neighbours(String name) {
        String group = name.toLowerCase(Locale.ROOT).split("\\.", 2)[0];
        String names = Vocabulary.group(group).stream().map(Entry::name).collect(Collectors.joining(", "));
        return names.isEmpty() ? "names of the groups " + String.join(", ", Vocabulary.groups()) : names;
    }
}
