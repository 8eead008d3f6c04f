package lampproof.event;

/** What becomes of the string. */
public enum StringFault {
    /** Nothing. */
    NONE,
    /** It opens. */
    OPEN,
    /** It is shorted. */
    SHORTED
}
