package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Reads a deck's lines and puts the lines of every other file in the place of its {@code .include} or {@code .lib}.
 *
 * <p>As in ngspice, included files are put in place first, those of a library file too; sections of libraries follow.
 */
final class DeckReader {

    /**
     * What is being read: a whole file, or one section of a library.
     *
     * @param file the file's name below the deck's folder
     * @param section the section; empty when the whole file is read
     */
    private record Opened(String file, Optional<String> section) {

        /** One section may call another one of its own file. */
        boolean readsAgain(Opened outer) {
            boolean otherSection =
                    section.isPresent() && outer.section().isPresent() && !section.equals(outer.section());
            return file.equals(outer.file()) && !otherSection;
        }
    }

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
        List<SourceLine> own = LineSplitter.split(text, deck);
        boolean title = CodeFinder.hasTitle(own);
        List<Opened> open = List.of(new Opened(FileNames.last(deck), Optional.empty()));
        List<SourceLine> behind = withSections(withIncludes(own.subList(title ? 1 : 0, own.size()), open), open);
        List<DeckLine> lines = new ArrayList<>();
        if (title) {
            lines.add(CodeFinder.title(own.get(0)));
        }
        lines.addAll(CodeFinder.find(own.get(0), behind));
        return lines;
    }

    /** What became of each included file, in order; complete after {@link #read}. */
    List<Include> includes() {
        return List.copyOf(includes);
    }

    private List<SourceLine> withIncludes(List<SourceLine> lines, List<Opened> open) {
        return expanded(lines, open, request -> request.section().isEmpty());
    }

    private List<SourceLine> withSections(List<SourceLine> lines, List<Opened> open) {
        return expanded(lines, open, request -> request.section().isPresent());
    }

    private List<SourceLine> expanded(List<SourceLine> lines, List<Opened> open, Predicate<FileRequest> wanted) {
        List<SourceLine> expanded = new ArrayList<>();
        for (SourceLine line : lines) {
            expanded.add(line);
            FileRequest.of(line).filter(wanted).ifPresent(request -> expanded.addAll(asked(request, open)));
        }
        return expanded;
    }

    private List<SourceLine> asked(FileRequest request, List<Opened> open) {
        IncludeFolder.File file =
                folder.open(request.path(), open.get(open.size() - 1).file());
        Opened opening = new Opened(file.file(), request.section());
        Include.Outcome outcome = outcome(file, opening, open);
        int told = includes.size();
        includes.add(new Include(request.path(), outcome, request.place()));
        if (outcome != Include.Outcome.READ) {
            return List.of();
        }
        List<Opened> opened = longer(open, opening);
        List<SourceLine> lines = withIncludes(lines(file), opened);
        return request.section().isEmpty() ? lines : section(request, lines, opened, told);
    }

    private List<SourceLine> section(FileRequest request, List<SourceLine> lines, List<Opened> open, int told) {
        LibrarySection section = LibrarySection.of(request.section().orElseThrow(), lines);
        includes.set(told, new Include(request.path(), section.outcome(), request.place()));
        return withSections(section.lines(), open);
    }

    private Include.Outcome outcome(IncludeFolder.File file, Opened opening, List<Opened> open) {
        if (file.outcome() != Include.Outcome.READ) {
            return file.outcome();
        }
        size += file.text().length();
        if (open.stream().anyMatch(opening::readsAgain)) {
            return Include.Outcome.LOOP;
        }
        boolean tooMuch = open.size() > Limits.DEPTH || size > Limits.SIZE || includes.size() >= Limits.FILES;
        return tooMuch ? Include.Outcome.TOO_MUCH : Include.Outcome.READ;
    }

    private List<SourceLine> lines(IncludeFolder.File file) {
        return LineSplitter.split(file.text(), FileNames.beside(deck, file.file()));
    }

    private static List<Opened> longer(List<Opened> open, Opened opening) {
        List<Opened> longer = new ArrayList<>(open);
        longer.add(opening);
        return longer;
    }
}
