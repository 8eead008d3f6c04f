package lampproof.waveform;

/**
 * Something noticed while a waveform file was read.
 *
 * @param isDefect whether the rows may be shown but not compared
 * @param text what was noticed, with its place
 */
public record Remark(boolean isDefect, String text) {

    /** A remark that does not affect the figures. */
    public static Remark note(String text) {
        return new Remark(false, text);
    }

    /** A remark on a defect: no figure may be compared. */
    public static Remark defect(String text) {
        return new Remark(true, text);
    }
}
