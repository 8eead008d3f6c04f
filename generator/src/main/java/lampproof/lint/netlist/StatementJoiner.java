package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Joins lines of code to statements. Comments and blank lines between a line and its continuation change nothing, and neither
 * do lines that the simulator makes comments of while it reads: a statement of their own, they have no continuation.
 */
final class StatementJoiner {

    private static final Pattern SKIPPED = Pattern.compile("(?is)[ \t]*+\\.(?:title|inc|end(?=\\s|$)).*");

    private final List<Statement> statements = new ArrayList<>();
    /** Skipped lines behind the statement that is not finished yet. */
    private final List<Statement> behind = new ArrayList<>();

    private final List<Statement.Piece> pieces = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();

    private StatementJoiner() {}

    static List<Statement> join(List<DeckLine> lines) {
        StatementJoiner joiner = new StatementJoiner();
        lines.stream().filter(line -> !line.isBlank()).forEach(joiner::add);
        joiner.finish();
        return List.copyOf(joiner.statements);
    }

    private void add(DeckLine line) {
        if (!line.continued() && isSkipped(line.source())) {
            behind.add(new Statement(line.part(), line.code(), List.of(new Statement.Piece(0, line))));
            return;
        }
        if (!line.continued()) {
            finish();
        }
        text.append(pieces.isEmpty() ? "" : " ");
        pieces.add(new Statement.Piece(text.length(), line));
        text.append(line.code());
    }

    private static boolean isSkipped(SourceLine line) {
        return SKIPPED.matcher(line.text()).matches() || FileRequest.of(line).isPresent();
    }

    private void finish() {
        if (!pieces.isEmpty()) {
            statements.add(new Statement(pieces.get(0).line().part(), text.toString(), pieces));
        }
        statements.addAll(behind);
        behind.clear();
        pieces.clear();
        text.setLength(0);
    }
}
