package lampproof.lint.netlist;

import java.util.ArrayList;
import java.util.List;

/** Joins lines of code to statements; comments and blank lines between a line and its continuation change nothing. */
final class StatementJoiner {

    private final List<Statement> statements = new ArrayList<>();
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
        if (!line.continued()) {
            finish();
        }
        text.append(pieces.isEmpty() ? "" : " ");
        pieces.add(new Statement.Piece(text.length(), line));
        text.append(line.code());
    }

    private void finish() {
        if (!pieces.isEmpty()) {
            statements.add(new Statement(pieces.get(0).line().part(), text.toString(), pieces));
        }
        pieces.clear();
        text.setLength(0);
    }
}
