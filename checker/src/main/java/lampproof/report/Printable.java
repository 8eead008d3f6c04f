package lampproof.report;

/** Text as every terminal shows it: a name or a message from a stranger's file must not steer it. */
final class Printable {

    private Printable() {}

    /** The text with u for micro and a question mark for each control character. */
    static String of(String text) {
        return text.replace('\u00b5', 'u').replaceAll("\\p{Cntrl}", "?");
    }
}
