package lampproof.lint.netlist;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A deck as the simulator understands it.
 *
 * @param file the deck's name as the user knows it
 * @param lines its lines and those of all included files, in the simulator's order
 * @param statements its statements
 * @param deck its elements, models, subcircuits and parameters; of conditional blocks those of the first branch
 * @param others what the other branches of conditional blocks hold, subcircuits taken apart
 * @param directives its other dot lines
 * @param commands the commands of its control block
 * @param includes the files that it asks for
 * @param circuit the flattened circuit
 */
public record Netlist(
        String file,
        List<DeckLine> lines,
        List<Statement> statements,
        Scope deck,
        Scope others,
        List<Directive> directives,
        List<Command> commands,
        List<Include> includes,
        Circuit circuit) {

    public Netlist {
        lines = List.copyOf(lines);
        statements = List.copyOf(statements);
        directives = List.copyOf(directives);
        commands = List.copyOf(commands);
        includes = List.copyOf(includes);
    }

    /** The deck and every subcircuit, each with the scopes around it. */
    public Stream<ScopePath> scopes() {
        return new ScopePath(List.of(deck)).all();
    }

    /** The scopes that the simulator may come to read: those of {@link #scopes}, and the other branches. */
    public Stream<Scope> possibleScopes() {
        return Stream.concat(scopes().map(ScopePath::scope), Stream.of(others));
    }

    /** Every element of the deck and of every subcircuit, each once. */
    public Stream<Element> elements() {
        return scopes().flatMap(path -> path.scope().elements().stream());
    }

    /** The analyses that the deck asks for, by directive or by command. */
    public List<Analysis> analyses() {
        return Analysis.of(directives, commands);
    }

    /** The vectors that the deck writes to a table of a name, in order; empty when it writes none. */
    public List<String> written(String table) {
        return commands.stream()
                .filter(command -> command.isOneOf(Set.of("wrdata")))
                .map(command -> command.arguments().stream().map(Word::text).toList())
                .filter(words -> !words.isEmpty() && words.get(0).equals(table))
                .findFirst()
                .map(words -> words.subList(1, words.size()))
                .orElse(List.of());
    }

    /** Whether some analysis starts from the operating point; also true where there is no analysis. */
    public boolean usesOperatingPoint() {
        return analyses().isEmpty() || analyses().stream().anyMatch(analysis -> !analysis.skipsOperatingPoint());
    }

    /** Whether every included file is part of this netlist, so that nothing is missing for want of a file. */
    public boolean isComplete() {
        return includes.stream().allMatch(Include::isRead);
    }

    /** Where the deck's own file ends. */
    public Place end() {
        DeckLine last = lines.stream()
                .filter(line -> line.source().file().equals(file)
                        && !line.source().text().isBlank())
                .reduce((earlier, later) -> later)
                .orElse(lines.get(0));
        return Place.whole(last.source());
    }
}
