package lampproof.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** A rule that is checked on source files as the compiler reads them, comments included. */
abstract class SourceRule extends TreePathScanner<Void, Void> {

    private final List<String> faults = new ArrayList<>();
    private DocTrees docs;

    /** What breaks the rule in the given files, each as {@code File.java:7: what is wrong}. */
    final List<String> faults(List<Path> files) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager =
                compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            docs = DocTrees.instance(task);
            scan(task.parse(), null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return faults;
    }

    /** Notes that the tree which is being visited breaks the rule. */
    final void fault(Tree tree, String what) {
        CompilationUnitTree file = getCurrentPath().getCompilationUnit();
        LineMap lines = file.getLineMap();
        long line = lines.getLineNumber(docs.getSourcePositions().getStartPosition(file, tree));
        faults.add(Path.of(file.getSourceFile().getName()).getFileName() + ":" + line + ": " + what);
    }

    /** The compiler's reading of the Javadoc. */
    final DocTrees docs() {
        return docs;
    }

    /** Whether the method that is being visited is public and named by its own type, not by one that it overrides. */
    final boolean isOwnPublic(MethodTree method) {
        Set<Modifier> flags = method.getModifiers().getFlags();
        boolean inInterface = enclosing().getKind() == Tree.Kind.INTERFACE && !flags.contains(Modifier.PRIVATE);
        return (inInterface || flags.contains(Modifier.PUBLIC)) && !isOverriding(method);
    }

    /** What encloses the tree that is being visited. */
    final Tree enclosing() {
        return getCurrentPath().getParentPath().getLeaf();
    }

    private static boolean isOverriding(MethodTree method) {
        return method.getModifiers().getAnnotations().stream()
                .anyMatch(
                        annotation -> annotation.getAnnotationType().toString().equals("Override"));
    }
}
