package lampproof.report;

/** Text that every terminal can show: a name or a message from an unknown file must not control the terminal. */
final class Printable {

    private Printable() {}

    /** The text with u for micro and a question mark for each control character. */
    static String of(String text) {
        return text.replace('\u00b5', 'u').replaceAll("\\p{Cntrl}", "?");
    }
}
