package lampproof.report;

/** How a text is emphasised. The meaning is always in the words too. */
public enum Style {
    /** Plain text, for anything but a terminal. */
    PLAIN,
    /** With colours, for a terminal. */
    COLOURED;

    private static final String OFF = "\u001b[0m";

    String good(String text) {
        return paint("32", text);
    }

    String bad(String text) {
        return paint("1;31", text);
    }

    String heading(String text) {
        return paint("1", text);
    }

    private String paint(String code, String text) {
        return this == PLAIN ? text : "\u001b[" + code + "m" + text + OFF;
    }
}
