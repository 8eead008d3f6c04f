package lampproof.architecture;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import java.util.List;

/** A class is named after what it is, a method after what it answers or does. */
final class NameRule extends SourceRule {

    private static final List<String> EMPTY_WORDS = List.of("Util", "Helper", "Manager");

    @Override
    public Void visitClass(ClassTree type, Void unused) {
        String name = type.getSimpleName().toString();
        if (EMPTY_WORDS.stream().anyMatch(name::contains)) {
            fault(type, name + " is named after nothing");
        }
        return super.visitClass(type, null);
    }

    @Override
    public Void visitMethod(MethodTree method, Void unused) {
        String name = method.getName().toString();
        if (isOwnPublic(method) && name.matches("get([A-Z].*)?")) {
            fault(method, name + " is prefixed with get");
        }
        return super.visitMethod(method, null);
    }
}
