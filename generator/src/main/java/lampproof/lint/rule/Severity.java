package lampproof.lint.rule;

import java.util.Locale;

/** How bad a finding is. */
public enum Severity {
    /** The run stops, its figures are wrong, or it does harm. */
    ERROR,
    /** The run may do what was meant; a reader or another simulator may not. */
    WARNING;

    /** The severity in a sentence. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
