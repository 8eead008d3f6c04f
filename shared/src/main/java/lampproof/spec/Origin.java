package lampproof.spec;

import java.util.Locale;

/** Where a row of a spec comes from. */
public enum Origin {
    /** The user wrote it. */
    GIVEN,
    /** The user left it open and lampproof filled it in. */
    DEFAULT;

    /** The word in the table. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
