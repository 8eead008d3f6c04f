package lampproof.architecture;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The compiled classes of all modules and which of them uses which; a nested class counts as the one around it. */
final class Program {

    /** The compiled classes. */
    static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_PACKAGE_INFOS)
            .importPackages("lampproof");

    private static final Map<String, Set<String>> USES = uses();

    private Program() {}

    /** The full names of all classes that stand in a file of their own. */
    static Set<String> names() {
        return USES.keySet();
    }

    /** All classes that a class uses, those that they use, and so on, and the class itself. */
    static Set<String> reachedFrom(String name) {
        Set<String> reached = new TreeSet<>();
        Deque<String> next = new ArrayDeque<>(Set.of(name));
        while (!next.isEmpty()) {
            String found = next.pop();
            if (reached.add(found)) {
                next.addAll(USES.get(found));
            }
        }
        return reached;
    }

    /** Every arrow from one package to another, such as {@code spec -> fault}, with one use of it. */
    static Map<String, String> arrows() {
        Map<String, String> arrows = new TreeMap<>();
        USES.forEach((from, used) -> used.stream()
                .filter(to -> !packageOf(to).equals(packageOf(from)))
                .forEach(to -> arrows.put(packageOf(from) + " -> " + packageOf(to), from + " uses " + to)));
        return arrows;
    }

    private static String packageOf(String name) {
        return name.substring("lampproof.".length(), name.lastIndexOf('.'));
    }

    private static Map<String, Set<String>> uses() {
        Map<String, Set<String>> uses = new TreeMap<>();
        CLASSES.forEach(type -> uses.computeIfAbsent(outermost(type), unused -> new TreeSet<>())
                .addAll(type.getDirectDependenciesFromSelf().stream()
                        .map(Dependency::getTargetClass)
                        .map(Program::outermost)
                        .toList()));
        NamedClasses.in(SourceTree.main())
                .forEach((name, named) ->
                        uses.getOrDefault(name, new TreeSet<>()).addAll(named));
        uses.values().forEach(names -> names.retainAll(uses.keySet()));
        return uses;
    }

    private static String outermost(JavaClass type) {
        JavaClass found = type.getBaseComponentType();
        while (found.getEnclosingClass().isPresent()) {
            found = found.getEnclosingClass().get();
        }
        return found.getName();
    }
}
