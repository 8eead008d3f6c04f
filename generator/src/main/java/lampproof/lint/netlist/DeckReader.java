package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a deck's lines and puts the lines of every included file in the place of its {@code .include} or {@code .lib}. */
final class DeckReader {

    private final String deck;
    private final IncludeFolder folder;
    private final List<Include> includes = new ArrayList<>();
    private long size;

    /**
     * @param deck the deck's name as the user knows it
     * @param folder where included files are looked for
     */
    DeckReader(String deck, IncludeFolder folder) {
        this.deck = deck;
        this.folder = folder;
    }

    /** The lines of the deck and of all that it includes, in the simulator's order. */
    List<DeckLine> read(String text) {
        size = text.length();
        return expand(LineSplitter.deck(text, deck), List.of(FileNames.last(deck)));
    }

    /** What became of each included file, in order; complete after {@link #read}. */
    List<Include> includes() {
        return List.copyOf(includes);
    }

    private List<DeckLine> expand(List<DeckLine> lines, List<String> open) {
        List<DeckLine> expanded = new ArrayList<>();
        for (DeckLine line : lines) {
            Optional<Request> request = Request.of(line);
            expanded.add(line);
            request.ifPresent(wanted -> expanded.addAll(include(wanted, open)));
        }
        return expanded;
    }

    private List<DeckLine> include(Request request, List<String> open) {
        IncludeFolder.File file = folder.open(request.path(), open.get(open.size() - 1));
        Include.Outcome outcome = outcome(file, open);
        List<DeckLine> lines = outcome == Include.Outcome.READ ? request.section(lines(file)) : List.of();
        boolean noSection = outcome == Include.Outcome.READ
                && lines.isEmpty()
                && request.section().isPresent();
        Include.Outcome result = noSection ? Include.Outcome.SECTION_MISSING : outcome;
        includes.add(new Include(request.path(), result, request.place()));
        return expand(lines, longer(open, file.file()));
    }

    private Include.Outcome outcome(IncludeFolder.File file, List<String> open) {
        if (file.outcome() != Include.Outcome.READ) {
            return file.outcome();
        }
        size += file.text().length();
        if (open.contains(file.file())) {
            return Include.Outcome.LOOP;
        }
        boolean tooMuch = open.size() > Limits.DEPTH || size > Limits.SIZE || includes.size() >= Limits.FILES;
        return tooMuch ? Include.Outcome.TOO_MUCH : Include.Outcome.READ;
    }

    private List<DeckLine> lines(IncludeFolder.File file) {
        return LineSplitter.included(file.text(), FileNames.beside(deck, file.file()));
    }

    private static List<String> longer(List<String> open, String file) {
        List<String> longer = new ArrayList<>(open);
        longer.add(file);
        return longer;
    }

    /** What an {@code .include path} or a {@code .lib path section} asks for. */
    private record Request(String path, Optional<String> section, Place place) {

        static Optional<Request> of(DeckLine line) {
            String code = line.code().toLowerCase(Locale.ROOT);
            boolean include = code.startsWith(".inc");
            if (!include && !code.startsWith(".lib")) {
                return Optional.empty();
            }
            List<Word> words = whole(line).wordsBetweenBlanks();
            boolean complete = words.size() >= (include ? 2 : 3);
            return complete ? Optional.of(request(words, include)) : Optional.empty();
        }

        /** The line with what would be a comment elsewhere: the simulator reads file names before it drops comments. */
        private static Statement whole(DeckLine line) {
            SourceLine source = line.source();
            int end = source.text().length();
            return StatementJoiner.join(List.of(new DeckLine(source, line.part(), false, line.from(), end)))
                    .get(0);
        }

        private static Request request(List<Word> words, boolean include) {
            Optional<String> section =
                    include ? Optional.empty() : Optional.of(words.get(2).lower());
            return new Request(
                    FileNames.unquoted(words.get(1).text()),
                    section,
                    words.get(1).place());
        }

        /** The wanted section of a library file; all of an included file. */
        List<DeckLine> section(List<DeckLine> lines) {
            return section.map(name -> section(lines, name)).orElse(lines);
        }

        private static List<DeckLine> section(List<DeckLine> lines, String name) {
            List<DeckLine> wanted = new ArrayList<>();
            boolean inside = false;
            for (DeckLine line : lines) {
                String code = line.code().strip().toLowerCase(Locale.ROOT);
                inside = inside ? !code.startsWith(".endl") : code.matches("\\.lib\\s+" + Pattern.quote(name));
                if (inside) {
                    wanted.add(line);
                }
            }
            return wanted;
        }
    }
}
