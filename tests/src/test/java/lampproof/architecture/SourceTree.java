package lampproof.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The source files of all modules, as they lie on the disk. */
public final class SourceTree {

    private static final List<String> MODULES = List.of("shared", "templates", "generator", "checker", "tests");

    private SourceTree() {}

    /** The top folder of the project, which holds the launcher. */
    public static Path top() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve(".mvn"))) {
            folder = folder.getParent();
        }
        return folder;
    }

    /** Every Java file below {@code src/main/java} of a module. */
    static List<Path> main() {
        return javaFiles("src/main/java");
    }

    /** Every Java file below {@code src/test/java} of a module. */
    static List<Path> test() {
        return javaFiles("src/test/java");
    }

    private static List<Path> javaFiles(String root) {
        return MODULES.stream()
                .map(module -> top().resolve(module).resolve(root))
                .filter(Files::isDirectory)
                .flatMap(SourceTree::javaFilesBelow)
                .toList();
    }

    private static Stream<Path> javaFilesBelow(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
