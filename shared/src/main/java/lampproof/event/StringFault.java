package lampproof.event;

/** The fault of the string. */
public enum StringFault {
    /** Nothing. */
    NONE,
    /** It opens. */
    OPEN,
    /** It is shorted. */
    SHORTED
}
