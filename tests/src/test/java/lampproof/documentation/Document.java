package lampproof.documentation;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lampproof.architecture.SourceTree;

/**
 * A Markdown file of the project.
 *
 * @param file where it is
 * @param lines its lines
 */
record Document(Path file, List<String> lines) {

    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern WORD = Pattern.compile("\\S+");

    Document {
        lines = List.copyOf(lines);
    }

    /** Every Markdown file at the top and in the folders of the modules; the README of the project is the first. */
    static List<Document> all() {
        try (Stream<Path> files = Files.walk(SourceTree.top(), 2)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted((one, other) -> key(one).compareTo(key(other)))
                    .map(Document::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The document of that name, such as {@code shared/README.md}. */
    static Document named(String name) {
        return read(SourceTree.top().resolve(name));
    }

    private static String key(Path file) {
        Path place = SourceTree.top().relativize(file);
        return (place.equals(Path.of("README.md")) ? "0" : "1") + place;
    }

    private static Document read(Path file) {
        try {
            return new Document(file, Files.readAllLines(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Its path below the top folder. */
    String name() {
        return SourceTree.top().relativize(file).toString().replace('\\', '/');
    }

    /** Words, as {@code wc -w} counts them. */
    long words() {
        return lines.stream().flatMap(line -> WORD.matcher(line).results()).count();
    }

    /** The targets of its links to files and headings of the project. */
    List<String> links() {
        return lines.stream()
                .flatMap(line -> LINK.matcher(line).results())
                .map((MatchResult link) -> link.group(1))
                .filter(target -> !target.startsWith("http"))
                .toList();
    }

    /** Whether a link of this document leads to a file and, if it names one, to a heading. */
    boolean leads(String link) {
        String[] parts = link.split("#", 2);
        Path target = parts[0].isEmpty() ? file : file.resolveSibling(parts[0]).normalize();
        return Files.exists(target)
                && (parts.length == 1 || read(target).anchors().contains(parts[1]));
    }

    private Set<String> anchors() {
        return lines.stream()
                .filter(line -> line.startsWith("#"))
                .map(line -> line.replaceFirst("^#+ ", "").toLowerCase(Locale.ROOT))
                .map(heading -> heading.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
                .collect(Collectors.toSet());
    }

    /** This document with other lines in place of those from one index to before another. */
    Document with(int from, int to, List<String> other) {
        List<String> changed = new ArrayList<>(lines.subList(0, from));
        changed.addAll(other);
        changed.addAll(lines.subList(to, lines.size()));
        return new Document(file, changed);
    }

    /** Writes it to its place. */
    void write() {
        try {
            Files.write(file, lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
