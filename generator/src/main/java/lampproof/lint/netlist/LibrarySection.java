package lampproof.lint.netlist;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A section of a library file, between {@code .lib name} and {@code .endl}.
 *
 * @param outcome whether there is one section of the name
 * @param lines its lines; none unless there is one
 */
record LibrarySection(Include.Outcome outcome, List<SourceLine> lines) {

    /** The keyword and what parts it from the name: blanks, quotes or both; two cases, so that no line takes long. */
    private static final String KEYWORD = "\\.lib(?:\\S*+[\\s'\"]++|\\S*['\"])";

    static LibrarySection of(String name, List<SourceLine> lines) {
        Pattern begin = Pattern.compile(KEYWORD + Pattern.quote(name) + "(?:[\\s'\";$/,].*)?", Pattern.DOTALL);
        List<Integer> begins = IntStream.range(0, lines.size())
                .filter(at -> begin.matcher(code(lines.get(at))).matches())
                .boxed()
                .toList();
        return switch (begins.size()) {
            case 0 -> new LibrarySection(Include.Outcome.SECTION_MISSING, List.of());
            case 1 -> new LibrarySection(Include.Outcome.READ, inside(lines, begins.get(0)));
            default -> new LibrarySection(Include.Outcome.AMBIGUOUS, List.of());
        };
    }

    private static List<SourceLine> inside(List<SourceLine> lines, int begin) {
        int end = IntStream.range(begin, lines.size())
                .filter(at -> code(lines.get(at)).startsWith(".endl"))
                .findFirst()
                .orElse(lines.size());
        return lines.subList(begin + 1, end);
    }

    private static String code(SourceLine line) {
        return line.text().substring(CodeFinder.start(line.text())).toLowerCase(Locale.ROOT);
    }
}
