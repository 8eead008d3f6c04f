package lampproof.architecture;

import com.sun.source.tree.AnnotationTree;

/** No test is switched off. */
final class NoDisabledTestRule extends SourceRule {

    @Override
    public Void visitAnnotation(AnnotationTree annotation, Void unused) {
        String name = annotation.getAnnotationType().toString();
        if (name.substring(name.lastIndexOf('.') + 1).startsWith("Disabled")) {
            fault(annotation, "@" + name + " switches a test off");
        }
        return super.visitAnnotation(annotation, null);
    }
}
