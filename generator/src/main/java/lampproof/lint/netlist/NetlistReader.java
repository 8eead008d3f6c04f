package lampproof.lint.netlist;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;

/** Sorts statements into elements, models, subcircuits, parameters, directives and commands. */
public final class NetlistReader {

    private final Deque<ScopeBuilder> open = new ArrayDeque<>(List.of(ScopeBuilder.deck()));
    private final ScopeBuilder others = ScopeBuilder.deck();
    private final List<Directive> directives = new ArrayList<>();
    private final List<Command> commands = new ArrayList<>();
    /** Depth of {@code .if} blocks, and the depth from which the untaken branch is skipped; 0 for none. */
    private int conditions;

    private int skippedFrom;

    private NetlistReader() {}

    /**
     * The netlist of a text; included files are not looked at.
     *
     * @throws UserFault when the text is larger or nested deeper than any real deck
     */
    public static Netlist parse(String text, String fileName) {
        return parse(text, fileName, Optional.empty());
    }

    /**
     * The netlist of a file and of the files that it includes from its own folder.
     *
     * @throws UserFault when the file cannot be read, or is larger or nested deeper than any real deck
     */
    public static Netlist read(Path file) {
        try {
            return parse(IncludeFolder.text(file), file.toString(), Optional.of(folder(file)));
        } catch (IOException unreadable) {
            String next = "name a netlist, or the folder of a run";
            throw UserFault.badInput(Finding.of("the netlist cannot be read", file.toString(), next));
        }
    }

    private static Netlist parse(String text, String fileName, Optional<Path> folder) {
        DeckReader reader = new DeckReader(fileName, new IncludeFolder(folder));
        List<DeckLine> lines = reader.read(text);
        return read(fileName, lines, reader.includes());
    }

    private static Path folder(Path file) {
        Path parent = file.getParent();
        return parent == null ? Path.of("") : parent;
    }

    private static Netlist read(String file, List<DeckLine> lines, List<Include> includes) {
        List<Statement> statements = StatementJoiner.join(lines);
        NetlistReader reader = new NetlistReader();
        statements.forEach(reader::add);
        Scope deck = reader.close();
        Circuit circuit = new Flattener(file, reader.directives).flatten(deck);
        Scope others = reader.others.build();
        return new Netlist(
                file, lines, statements, deck, others, reader.directives, reader.commands, includes, circuit);
    }

    private void add(Statement statement) {
        List<Word> words = statement.words();
        if (words.isEmpty()) {
            return;
        }
        if (statement.part() == DeckLine.Part.CONTROL) {
            addCommand(statement, words);
        } else if (!isCondition(words.get(0))) {
            add(statement, words);
        }
    }

    /** The simulator runs commands in any branch, so this comes before the conditions; it tries other dot lines as commands. */
    private void addCommand(Statement statement, List<Word> words) {
        List<Word> arguments = words.subList(1, words.size());
        String first = words.get(0).lower();
        boolean end = first.equals(".end") && arguments.isEmpty();
        if (first.startsWith(".control") || first.startsWith(".endc") || end) {
            directives.add(new Directive(words.get(0), arguments, statement));
        } else {
            commands.add(Command.of(words.get(0), arguments, statement));
        }
    }

    /**
     * Whether a line begins or ends a branch. The first branch of a block is taken for the circuit: which one holds is known
     * only when the deck runs.
     */
    private boolean isCondition(Word keyword) {
        switch (keyword.lower()) {
            case ".if" -> conditions++;
            case ".else", ".elseif" -> skippedFrom = skippedFrom == 0 ? conditions : skippedFrom;
            case ".endif" -> {
                skippedFrom = skippedFrom == conditions ? 0 : skippedFrom;
                conditions--;
            }
            default -> {
                return false;
            }
        }
        return true;
    }

    private void add(Statement statement, List<Word> words) {
        if (skippedFrom == 0) {
            addStatement(statement, words);
        } else {
            addOtherBranch(statement, words);
        }
    }

    private void addOtherBranch(Statement statement, List<Word> words) {
        switch (words.get(0).lower()) {
            case ".model" -> others.addModel(statement, words);
            case ".param" -> others.addParameters(words);
            default -> {
                if (!words.get(0).text().startsWith(".")) {
                    others.addElement(statement);
                }
            }
        }
    }

    private void addStatement(Statement statement, List<Word> words) {
        ScopeBuilder scope = open.element();
        switch (words.get(0).lower()) {
            case ".subckt", ".macro" -> begin(words);
            case ".ends", ".eom" -> end();
            case ".model" -> scope.addModel(statement, words);
            case ".param" -> scope.addParameters(words);
            default -> addOther(scope, statement, words);
        }
    }

    private void addOther(ScopeBuilder scope, Statement statement, List<Word> words) {
        if (words.get(0).text().startsWith(".")) {
            directives.add(new Directive(words.get(0), words.subList(1, words.size()), statement));
        } else {
            scope.addElement(statement);
        }
    }

    private void begin(List<Word> words) {
        SourceLine line = words.get(0).place().line();
        Limits.checkNesting(open.size(), line.file() + ":" + line.number());
        open.push(ScopeBuilder.subcircuit(words));
    }

    private void end() {
        if (open.size() > 1) {
            Scope finished = open.pop().build();
            open.element().addScope(finished);
        }
    }

    private Scope close() {
        while (open.size() > 1) {
            end();
        }
        return open.element().build();
    }
}
