package lampproof.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The source files of all modules, as they lie on the disk. */
public final class SourceTree {

    private static final Pattern MAIN = Pattern.compile("([^/]+)/src/main/java/(.+)/([^/]+)\\.java");
    private static final Pattern TEST = Pattern.compile("[^/]+/src/test/java/.+\\.java");
    private static final Pattern BUILT = Pattern.compile("(.+/)?target/.*");

    private SourceTree() {}

    /** The top folder of the project, which holds the launcher. */
    public static Path top() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve(".mvn"))) {
            folder = folder.getParent();
        }
        return folder;
    }

    /** Every Java file of the project, wherever it lies, but for those that a build wrote. */
    static List<Path> all() {
        try (Stream<Path> files = Files.walk(top())) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !place(file, BUILT).matches())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every Java file below {@code src/main/java} of a module. */
    static List<Path> main() {
        return all().stream().filter(file -> place(file, MAIN).matches()).toList();
    }

    /** Every Java file below {@code src/test/java} of a module. */
    static List<Path> test() {
        return all().stream().filter(file -> place(file, TEST).matches()).toList();
    }

    /** The module that holds a main source. */
    static String moduleOf(Path source) {
        return mainPlace(source).group(1);
    }

    /** The package of a main source, such as {@code lampproof.spec}. */
    static String packageOf(Path source) {
        return mainPlace(source).group(2).replace('/', '.');
    }

    /** The class that a main source is named after, such as {@code lampproof.spec.Spec}. */
    static String classOf(Path source) {
        return packageOf(source) + "." + mainPlace(source).group(3);
    }

    private static Matcher mainPlace(Path source) {
        Matcher place = place(source, MAIN);
        if (!place.matches()) {
            throw new IllegalArgumentException(source + " is outside src/main/java");
        }
        return place;
    }

    private static Matcher place(Path file, Pattern pattern) {
        return pattern.matcher(top().relativize(file).toString().replace('\\', '/'));
    }
}
