package lampproof.lint;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import lampproof.lint.netlist.NetlistReader;
import lampproof.lint.rule.LintFinding;

/** Decks for tests. */
public final class Decks {

    private Decks() {}

    /** Everything that the linter says about a deck that is called deck.cir, each finding in full. */
    public static List<String> messages(String deck) {
        return findings(deck).stream().map(LintFinding::text).toList();
    }

    /** The rules that find something in a deck, in the order of its lines, with the line number: {@code rule:line}. */
    public static List<String> rules(String deck) {
        return findings(deck).stream()
                .map(finding -> finding.rule() + ":" + finding.lineNumber())
                .toList();
    }

    /** The text of a clean deck of the test resources. */
    public static String clean(String name) throws IOException {
        try (InputStream stream = Decks.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<LintFinding> findings(String deck) {
        return Linter.check(NetlistReader.parse(deck, "deck.cir"));
    }
}
