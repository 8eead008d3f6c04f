package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Splits a file into lines and finds the code in each, as ngspice does.
 *
 * <p>The first line of a deck is its title whatever it holds. A statement may have blanks in front. {@code *} begins a
 * comment line, but {@code *#} hides a command in one. {@code ;} and {@code //} begin a comment anywhere, {@code $}
 * after a blank or a comma. A line that begins with another mark is dropped.
 */
final class LineSplitter {

    private static final String DROPPED = "=[]?()&%$\"!:,;\f#";
    private static final String SCRIPT = "*ng_script";
    private static final Pattern LIBRARY = Pattern.compile("(?i)\\s{0,99}\\.(?:model|subckt|macro|lib)\\b");
    private static final Pattern RUN = Pattern.compile("(?im)^[ \t]{0,99}\\.(?:tran|op|ac|dc|control|end)\\b");

    private final String file;
    private boolean control;

    private LineSplitter(String file, boolean control) {
        this.file = file;
        this.control = control;
    }

    /** The lines of a deck, whose first line is its title; of a library of models, which has none. */
    static List<DeckLine> deck(String text, String file) {
        String[] lines = lines(text, file);
        boolean script = lower(lines[0]).startsWith(SCRIPT);
        boolean title =
                !LIBRARY.matcher(lines[0]).lookingAt() || RUN.matcher(text).find();
        List<DeckLine> deck = new ArrayList<>();
        if (title) {
            deck.add(new DeckLine(new SourceLine(file, 1, lines[0]), DeckLine.Part.TITLE, false, 0, 0));
        }
        deck.addAll(new LineSplitter(file, script).read(lines, title ? 1 : 0));
        return deck;
    }

    /** The lines of an included file, which has no title. */
    static List<DeckLine> included(String text, String file) {
        return new LineSplitter(file, false).read(lines(text, file), 0);
    }

    private static String[] lines(String text, String file) {
        Limits.checkSize(text.length(), file);
        String[] lines = text.split("\r\n|\r|\n", -1);
        Limits.checkLines(lines, file);
        boolean endsWithLineEnd = lines.length > 1 && lines[lines.length - 1].isEmpty();
        return endsWithLineEnd ? Arrays.copyOf(lines, lines.length - 1) : lines;
    }

    private List<DeckLine> read(String[] lines, int first) {
        List<DeckLine> read = new ArrayList<>();
        for (int index = first; index < lines.length; index++) {
            read.add(line(new SourceLine(file, index + 1, lines[index])));
        }
        return read;
    }

    private DeckLine line(SourceLine source) {
        String text = source.text();
        int start = text.length() - text.stripLeading().length();
        String code = lower(text.substring(start));
        if (code.startsWith("*#")) {
            return new DeckLine(source, DeckLine.Part.CONTROL, false, start + 2, text.length());
        }
        control |= code.startsWith(".control");
        DeckLine line = control ? command(source, start) : statement(source, start);
        control &= !code.startsWith(".endc");
        return line;
    }

    private static DeckLine command(SourceLine source, int start) {
        boolean comment = startsWith(source, start, "*#");
        int end = comment ? start : endOfCode(source.text(), start, true);
        return new DeckLine(source, DeckLine.Part.CONTROL, false, start, end);
    }

    private static DeckLine statement(SourceLine source, int start) {
        if (startsWith(source, start, "*" + DROPPED)) {
            return new DeckLine(source, DeckLine.Part.CIRCUIT, false, start, start);
        }
        boolean continued = startsWith(source, start, "+");
        int from = continued ? start + 1 : start;
        return new DeckLine(source, DeckLine.Part.CIRCUIT, continued, from, endOfCode(source.text(), from, false));
    }

    private static boolean startsWith(SourceLine source, int start, String letters) {
        return start < source.text().length() && letters.indexOf(source.text().charAt(start)) >= 0;
    }

    private static int endOfCode(String text, int from, boolean command) {
        for (int at = from; at < text.length(); at++) {
            if (beginsComment(text, at, command)) {
                return text.substring(0, at).stripTrailing().length();
            }
        }
        return Math.max(from, text.stripTrailing().length());
    }

    private static boolean beginsComment(String text, int at, boolean command) {
        return switch (text.charAt(at)) {
            case ';' -> true;
            case '/' -> !command && text.startsWith("//", at);
            case '$' -> at > 0 && (command ? isLoneSign(text, at) : isDetached(text, at));
            default -> false;
        };
    }

    /** In a command {@code $} is the variable sign unless it stands alone. */
    private static boolean isLoneSign(String text, int at) {
        return isDetached(text, at) && (at + 1 == text.length() || Character.isWhitespace(text.charAt(at + 1)));
    }

    private static boolean isDetached(String text, int at) {
        char before = text.charAt(at - 1);
        return (Character.isWhitespace(before) || before == ',') && !text.startsWith("${", at);
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
