package lampproof.lint.netlist;

/**
 * A file that a deck asks for with {@code .include} or {@code .lib}.
 *
 * @param path the file's name as written, quotes removed
 * @param outcome what became of it
 * @param place where its name stands
 */
public record Include(String path, Outcome outcome, Place place) {

    /** What became of an included file. */
    public enum Outcome {
        /** Read; its lines are part of the netlist. */
        READ,
        /** No folder was given to look in. */
        NOT_LOOKED_AT,
        /** There is no such file, or it cannot be read. */
        MISSING,
        /** The library file has no such section. */
        SECTION_MISSING,
        /** Two files or two sections have the name, and which of them the simulator reads is not certain. */
        AMBIGUOUS,
        /** Not looked at because it lies outside the deck's folder. */
        OUTSIDE,
        /** Not read again because it includes itself, straight or round about. */
        LOOP,
        /** Not read because includes are nested too deep, or are too many or too large. */
        TOO_MUCH
    }

    /** Whether the file's lines are part of the netlist. */
    public boolean isRead() {
        return outcome == Outcome.READ;
    }
}
