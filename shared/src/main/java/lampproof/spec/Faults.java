package lampproof.spec;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** Collects what is wrong with one table, in the order of its lines, each finding once. */
final class Faults {

    private static final int WHOLE_TABLE = Integer.MAX_VALUE;

    private final String file;
    private final Map<Integer, Set<Finding>> byLine = new TreeMap<>();

    Faults(String file) {
        this.file = file;
    }

    /** An empty collection for the same table. */
    Faults ofSameTable() {
        return new Faults(file);
    }

    String file() {
        return file;
    }

    String place(int line) {
        return file + ", line " + line;
    }

    String place(int line, Column cell) {
        return place(line) + ", " + cell.word();
    }

    void add(int line, Finding finding) {
        byLine.computeIfAbsent(line, key -> new LinkedHashSet<>()).add(finding);
    }

    /** What the reading yields, or nothing when it throws a fault, which is then added. */
    <T> Optional<T> collect(int line, Supplier<T> reading) {
        try {
            return Optional.of(reading.get());
        } catch (UserFault fault) {
            fault.findings().forEach(finding -> add(line, finding));
            return Optional.empty();
        }
    }

    void addForTable(Finding finding) {
        add(WHOLE_TABLE, finding);
    }

    void throwIfAny() {
        List<Finding> findings =
                byLine.values().stream().flatMap(Collection::stream).toList();
        if (!findings.isEmpty()) {
            throw UserFault.badInput(findings);
        }
    }
}
