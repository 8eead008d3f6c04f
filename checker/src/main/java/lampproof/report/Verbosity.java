package lampproof.report;

/** How much of a result is printed. */
public enum Verbosity {
    /** One line. */
    QUIET,
    /** The answer: headline, rules and verdict. */
    ANSWER,
    /** The answer and every figure. */
    ALL
}
