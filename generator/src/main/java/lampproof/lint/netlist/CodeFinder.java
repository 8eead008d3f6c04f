package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Finds the code in each line of a deck and whether it belongs to the control block, as ngspice does.
 *
 * <p>It reads the lines in the simulator's order, included files in their place, because a control block that one file opens
 * ends only at the next {@code .endc}, in whatever file that stands.
 *
 * <p>The first line of a deck is its title whatever it holds. A statement may have blanks or tabs in front. {@code *} begins a
 * comment line, but {@code *#} hides a command in one. Behind the first character {@code ;} begins a comment, and so does
 * {@code //} anywhere. {@code $} begins one in the circuit behind a blank, a tab or a comma, in the control block before a
 * blank. A line of the circuit that begins with another mark is dropped.
 */
final class CodeFinder {

    private static final String DROPPED = "=[]?()&%$\"!:,;\f#";
    private static final String SCRIPT = "*ng_script";
    private static final Pattern LIBRARY = Pattern.compile("(?i)\\s{0,99}\\.(?:model|subckt|macro|lib)\\b");
    private static final Pattern RUN = Pattern.compile("(?i)[ \t]{0,99}\\.(?:tran|op|ac|dc|control|end)\\b");

    private boolean control;

    private CodeFinder(boolean control) {
        this.control = control;
    }

    /** Whether the first line is a title: a library of models that no analysis follows has none. */
    static boolean hasTitle(List<SourceLine> lines) {
        return !LIBRARY.matcher(lines.get(0).text()).lookingAt()
                || lines.stream().anyMatch(line -> RUN.matcher(line.text()).lookingAt());
    }

    /** The title of a deck. */
    static DeckLine title(SourceLine first) {
        return new DeckLine(first, DeckLine.Part.TITLE, false, 0, 0);
    }

    /**
     * The code of all lines behind the title.
     *
     * @param first the deck's first line, which may make every other line a command
     * @param lines the lines, in the simulator's order
     */
    static List<DeckLine> find(SourceLine first, List<SourceLine> lines) {
        CodeFinder finder = new CodeFinder(lower(first.text()).startsWith(SCRIPT));
        List<DeckLine> found = new ArrayList<>();
        lines.forEach(line -> found.add(finder.line(line)));
        return found;
    }

    /** First column of a line that is neither blank nor tab, counted from 0 [-]. */
    static int start(String text) {
        int at = 0;
        while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
            at++;
        }
        return at;
    }

    private DeckLine line(SourceLine source) {
        int start = start(source.text());
        String code = lower(source.text().substring(start));
        if (code.startsWith("*#")) {
            return new DeckLine(
                    source,
                    DeckLine.Part.CONTROL,
                    false,
                    start + 2,
                    source.text().length());
        }
        control |= code.startsWith(".control");
        DeckLine line = control ? command(source, start) : statement(source, start);
        control &= !code.startsWith(".endc");
        return line;
    }

    private static DeckLine command(SourceLine source, int start) {
        boolean comment = startsWith(source, start, "*#");
        int end = comment ? start : endOfCode(source.text(), start, true);
        return code(source, DeckLine.Part.CONTROL, start, end);
    }

    private static DeckLine statement(SourceLine source, int start) {
        boolean dropped = startsWith(source, start, "*" + DROPPED);
        int end = dropped ? start : endOfCode(source.text(), start, false);
        return code(source, DeckLine.Part.CIRCUIT, start, end);
    }

    private static DeckLine code(SourceLine source, DeckLine.Part part, int start, int end) {
        boolean continued = startsWith(source, start, "+");
        int from = continued ? start + 1 : start;
        return new DeckLine(source, part, continued, from, Math.max(from, end));
    }

    private static boolean startsWith(SourceLine source, int start, String letters) {
        return start < source.text().length() && letters.indexOf(source.text().charAt(start)) >= 0;
    }

    private static int endOfCode(String text, int start, boolean command) {
        int at = start;
        while (at < text.length() && !beginsComment(text, start, at, command)) {
            at++;
        }
        return Math.max(start, text.substring(0, at).stripTrailing().length());
    }

    private static boolean beginsComment(String text, int start, int at, boolean command) {
        return switch (text.charAt(at)) {
            case ';' -> at > start;
            case '/' -> text.startsWith("//", at);
            case '$' -> command ? text.startsWith("$ ", at) : isDetached(text, start, at);
            default -> false;
        };
    }

    /** A dollar sign with a brace is kept: it is the mark of a template, of which a rule tells. */
    private static boolean isDetached(String text, int start, int at) {
        return at > start && " ,\t".indexOf(text.charAt(at - 1)) >= 0 && !text.startsWith("${", at);
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
