package lampproof.architecture;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;

/**
 * Every public type has Javadoc, and every number that goes in or out of one has its unit, such as {@code [V]} or
 * {@code [-]}: in its own tag, in the tag of the record's component of the same name, or in the main text where it has
 * no tag.
 */
final class JavadocRule extends SourceRule {

    private static final Set<String> NUMBERS = Set.of("double", "double[]", "Double", "OptionalDouble", "DoubleStream");
    private static final Pattern UNIT = Pattern.compile("\\[(-|%|(1/)?[\\p{L}°][^]\\[,]*)]");

    private int types;

    /** How many public types that stand in no other were checked. */
    int types() {
        return types;
    }

    @Override
    public Void visitClass(ClassTree type, Void unused) {
        if (!type.getModifiers().getFlags().contains(Modifier.PUBLIC)) {
            return null;
        }
        if (enclosing() instanceof CompilationUnitTree) {
            types++;
        }
        if (comment().isEmpty()) {
            fault(type, type.getSimpleName() + " has no Javadoc");
        }
        if (type.getKind() == Tree.Kind.RECORD) {
            components(type).forEach(component -> checkParameter(type, component));
        }
        return super.visitClass(type, null);
    }

    @Override
    public Void visitMethod(MethodTree method, Void unused) {
        if (isOwnPublic(method) && !isConstructorOfRecord(method)) {
            method.getParameters().forEach(parameter -> checkParameter(method, parameter));
            if (isNumber(method.getReturnType()) && !hasUnit(returned().orElse(mainText()))) {
                fault(method, method.getName() + " answers a number without its unit");
            }
        }
        return null;
    }

    private void checkParameter(Tree owner, VariableTree parameter) {
        String name = parameter.getName().toString();
        if (isNumber(parameter.getType()) && !hasUnit(parameterText(name).orElse(mainText()))) {
            fault(owner, name + " is a number without its unit");
        }
    }

    private static Stream<VariableTree> components(ClassTree type) {
        return type.getMembers().stream()
                .filter(VariableTree.class::isInstance)
                .map(VariableTree.class::cast)
                .filter(field -> !field.getModifiers().getFlags().contains(Modifier.STATIC));
    }

    private boolean isConstructorOfRecord(MethodTree method) {
        return enclosing().getKind() == Tree.Kind.RECORD && method.getReturnType() == null;
    }

    private static boolean isNumber(Tree type) {
        return type != null && NUMBERS.contains(type.toString());
    }

    private static boolean hasUnit(String text) {
        return UNIT.matcher(text).find();
    }

    private Optional<DocCommentTree> comment() {
        return Optional.ofNullable(docs().getDocCommentTree(getCurrentPath()));
    }

    private Optional<DocCommentTree> commentOfEnclosing() {
        return Optional.ofNullable(docs().getDocCommentTree(getCurrentPath().getParentPath()));
    }

    private String mainText() {
        return comment().map(DocCommentTree::getFullBody).map(JavadocRule::text).orElse("");
    }

    private Optional<String> parameterText(String name) {
        return Stream.of(comment(), commentOfEnclosing())
                .flatMap(comment -> tags(comment, ParamTree.class))
                .filter(tag ->
                        !tag.isTypeParameter() && tag.getName().toString().equals(name))
                .map(tag -> text(tag.getDescription()))
                .findFirst();
    }

    private Optional<String> returned() {
        return tags(comment(), ReturnTree.class)
                .map(tag -> text(tag.getDescription()))
                .findFirst();
    }

    private static <T extends DocTree> Stream<T> tags(Optional<DocCommentTree> comment, Class<T> kind) {
        return comment.stream()
                .flatMap(text -> text.getBlockTags().stream())
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    private static String text(List<? extends DocTree> parts) {
        return String.join("", parts.stream().map(DocTree::toString).toList());
    }
}
