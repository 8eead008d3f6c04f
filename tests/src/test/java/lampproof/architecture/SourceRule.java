package lampproof.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.Modifier;

/** A rule that is checked on source files. */
abstract class SourceRule extends SourceScan {

    private final List<String> faults = new ArrayList<>();

    /** What breaks the rule in the given files, each as {@code File.java:7: what is wrong}. */
    final List<String> faults(List<Path> files) {
        visit(files);
        return faults;
    }

    /** Notes that the tree which is being visited breaks the rule. */
    final void fault(Tree tree, String what) {
        CompilationUnitTree file = getCurrentPath().getCompilationUnit();
        LineMap lines = file.getLineMap();
        long line = lines.getLineNumber(docs().getSourcePositions().getStartPosition(file, tree));
        faults.add(Path.of(file.getSourceFile().getName()).getFileName() + ":" + line + ": " + what);
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
