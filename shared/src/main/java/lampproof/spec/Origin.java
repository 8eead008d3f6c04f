package lampproof.spec;

/** Where a row of a spec comes from. */
public enum Origin implements Keyword {
    /** The user wrote it. */
    GIVEN,
    /** The user did not give it and lampproof filled it in. */
    DEFAULT
}
