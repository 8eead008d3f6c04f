package lampproof.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The classes of a package form layers: none depends on itself by way of others of its package. Nested classes count as
 * their outermost class. Constants that the compiler copies are not seen.
 */
class LayersTest {

    private static final Map<String, Set<String>> USES = uses();

    @Test
    void everySourceFileWasScanned() {
        assertThat(SourceTree.main().stream()
                        .map(Path::getFileName)
                        .map(Path::toString)
                        .filter(file -> !file.equals("package-info.java"))
                        .count())
                .isPositive()
                .isLessThanOrEqualTo(USES.size());
    }

    @Test
    void noClassesOfAPackageDependOnEachOtherInACircle() {
        assertThat(circles(USES)).isEmpty();
    }

    @Test
    void aCircleIsToldFromALayer() {
        Map<String, Set<String>> uses = Map.of("A", Set.of("B"), "B", Set.of("C"), "C", Set.of("B"), "D", Set.of("A"));
        assertThat(circles(uses)).isEqualTo(Map.of("B", "B -> C -> B", "C", "C -> B -> C"));
    }

    /** The outermost classes, each with those of its package that it uses. */
    private static Map<String, Set<String>> uses() {
        Map<String, Set<String>> uses = new TreeMap<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("lampproof")) {
            Set<String> used = uses.computeIfAbsent(outermost(type), any -> new TreeSet<>());
            type.getDirectDependenciesFromSelf().stream()
                    .map(Dependency::getTargetClass)
                    .map(JavaClass::getBaseComponentType)
                    .filter(other -> other.getPackageName().equals(type.getPackageName()))
                    .map(LayersTest::outermost)
                    .filter(other -> !other.equals(outermost(type)))
                    .forEach(used::add);
        }
        return uses;
    }

    private static String outermost(JavaClass type) {
        return type.getEnclosingClass().map(LayersTest::outermost).orElse(type.getName());
    }

    /** The classes that come back to themselves, each with its shortest way. */
    private static Map<String, String> circles(Map<String, Set<String>> uses) {
        Map<String, String> circles = new TreeMap<>();
        uses.keySet().forEach(name -> circle(name, uses).ifPresent(way -> circles.put(name, way)));
        return circles;
    }

    private static Optional<String> circle(String start, Map<String, Set<String>> uses) {
        Map<String, String> ways = new HashMap<>(Map.of(start, start));
        Deque<String> next = new ArrayDeque<>(List.of(start));
        while (!next.isEmpty()) {
            String from = next.remove();
            Set<String> used = uses.getOrDefault(from, Set.of());
            if (used.contains(start)) {
                return Optional.of(ways.get(from) + " -> " + start);
            }
            used.stream().filter(to -> !ways.containsKey(to)).forEach(to -> {
                ways.put(to, ways.get(from) + " -> " + to);
                next.add(to);
            });
        }
        return Optional.empty();
    }
}
