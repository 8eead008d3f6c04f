package lampproof.architecture;

import com.sun.source.tree.LiteralTree;
import java.util.regex.Pattern;

/** A number becomes text in the package {@code unit} only: no other string formats a floating-point number. */
final class NumberFormatRule extends SourceRule {

    private static final Pattern FORMAT = Pattern.compile("%[-+0,#(]*\\d*(\\.\\d+)?[feg]");

    @Override
    public Void visitLiteral(LiteralTree literal, Void unused) {
        if (literal.getValue() instanceof String text && FORMAT.matcher(text).find()) {
            fault(literal, "a number is formatted outside the package unit");
        }
        return super.visitLiteral(literal, null);
    }
}
