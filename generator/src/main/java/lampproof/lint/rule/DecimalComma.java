package lampproof.lint.rule;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.DeckLine;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Statement;

/** A comma between the digits of one value; between the arguments of a function it is none. */
final class DecimalComma implements Rule {

    private static final Pattern COMMA = Pattern.compile("(?<![\\w.,])[-+]?\\d{1,15},\\d{1,15}[A-Za-z]{0,8}");
    private static final Pattern ASSIGNED = Pattern.compile("(?<==)\\s{0,9}[-+]?\\d{1,15},\\d{1,15}[A-Za-z]{0,8}");

    private static final Pattern FUNCTION =
            Pattern.compile("\\b(?:pulse|sin|exp|pwl|sffm|am|poly|table)\\b", Pattern.CASE_INSENSITIVE);

    @Override
    public String name() {
        return "decimal-comma";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.statements().stream()
                .filter(statement -> statement.part() == DeckLine.Part.CIRCUIT)
                .filter(statement -> !FUNCTION.matcher(statement.text()).find())
                .flatMap(this::check);
    }

    private Stream<LintFinding> check(Statement statement) {
        boolean model = statement.text().regionMatches(true, 0, ".model", 0, 6);
        Pattern pattern = model ? ASSIGNED : COMMA;
        String text = model ? statement.text() : outsideBrackets(statement.text());
        return pattern.matcher(text).results().map(found -> finding(statement, found));
    }

    private LintFinding finding(Statement statement, MatchResult found) {
        String value = found.group().strip();
        return error(
                statement.place(found.end() - value.length(), found.end()),
                "the comma in " + value + " parts it into two words",
                "a comma is a blank to the simulator: it takes one of the two numbers as the value, without a message",
                value.replace(',', '.'));
    }

    /** The text with blanks for what stands in brackets, where a comma parts arguments. */
    private static String outsideBrackets(String text) {
        StringBuilder outside = new StringBuilder();
        int depth = 0;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            depth += "({".indexOf(letter) >= 0 ? 1 : 0;
            outside.append(depth > 0 ? ' ' : letter);
            depth -= ")}".indexOf(letter) >= 0 ? 1 : 0;
        }
        return outside.toString();
    }
}
