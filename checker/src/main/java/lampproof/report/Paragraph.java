package lampproof.report;

/** Text in lines that a terminal holds. */
final class Paragraph {

    private static final int WIDTH = 100;

    private Paragraph() {}

    /** The text in lines, the first and the next ones indented. */
    static String of(String text, String first, String next) {
        StringBuilder lines = new StringBuilder();
        String line = first;
        String gap = "";
        for (String word : text.split(" ", -1)) {
            if (!gap.isEmpty() && line.length() + 1 + word.length() > WIDTH) {
                lines.append(line).append("\n");
                line = next;
                gap = "";
            }
            line += gap + word;
            gap = " ";
        }
        return lines.append(line).append("\n").toString();
    }
}
