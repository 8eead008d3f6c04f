package lampproof.waveform;

/**
 * Something noticed while a waveform file was read.
 *
 * @param isDefect whether the rows may still be looked at but no longer judged
 * @param text what was noticed, with its place
 */
public record Remark(boolean isDefect, String text) {

    /** A remark that leaves the figures standing. */
    public static Remark note(String text) {
        return new Remark(false, text);
    }

    /** A remark after which no figure may be judged. */
    public static Remark defect(String text) {
        return new Remark(true, text);
    }
}
