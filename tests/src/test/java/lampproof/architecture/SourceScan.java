package lampproof.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Visits source files as the compiler reads them, comments included. */
abstract class SourceScan extends TreePathScanner<Void, Void> {

    private DocTrees docs;

    /** Visits the given files. */
    final void visit(List<Path> files) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager =
                compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            docs = DocTrees.instance(task);
            int visited = 0;
            for (CompilationUnitTree source : task.parse()) {
                scan(source, null);
                visited++;
            }
            assertThat(visited).as("files visited").isEqualTo(files.size());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The compiler's reading of the Javadoc. */
    final DocTrees docs() {
        return docs;
    }
}
