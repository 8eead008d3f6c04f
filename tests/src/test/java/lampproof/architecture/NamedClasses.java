package lampproof.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.ImportTree;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The classes that each source names: a constant of another class leaves no trace in the compiled one. */
final class NamedClasses extends SourceScan {

    private static final Pattern IMPORTED = Pattern.compile("(lampproof\\.[a-z.]+\\.[A-Z]\\w*).*");

    private final Map<String, Set<String>> named = new HashMap<>();
    private final Map<String, String> imported = new HashMap<>();
    private String packageName;
    private Set<String> names;

    /** For each class, what its source names: by an import, or else as if it were of the same package. */
    static Map<String, Set<String>> in(List<Path> sources) {
        NamedClasses scan = new NamedClasses();
        scan.visit(sources);
        return scan.named;
    }

    @Override
    public Void visitCompilationUnit(CompilationUnitTree file, Void unused) {
        Path source = Path.of(file.getSourceFile().toUri());
        packageName = SourceTree.packageOf(source);
        names = new HashSet<>();
        named.put(SourceTree.classOf(source), names);
        imported.clear();
        return super.visitCompilationUnit(file, null);
    }

    @Override
    public Void visitImport(ImportTree line, Void unused) {
        String name = line.getQualifiedIdentifier().toString();
        Matcher found = IMPORTED.matcher(name);
        if (found.matches()) {
            imported.put(name.substring(name.lastIndexOf('.') + 1), found.group(1));
        }
        return null;
    }

    @Override
    public Void visitIdentifier(IdentifierTree word, Void unused) {
        String name = word.getName().toString();
        names.add(imported.getOrDefault(name, packageName + "." + name));
        return null;
    }
}
