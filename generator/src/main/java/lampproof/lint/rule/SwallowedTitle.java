package lampproof.lint.rule;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.DeckLine;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.Scope;
import lampproof.lint.netlist.SourceLine;
import lampproof.lint.netlist.SpiceNumber;

/** The first line is the title whatever it holds: an element or a directive put there is lost without a word. */
final class SwallowedTitle implements Rule {

    private static final String SOURCE_WORDS = "(?i)(dc|ac|pulse|sin|pwl|exp|sffm|am)\\b.*";

    @Override
    public String name() {
        return "swallowed-title";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        DeckLine title = netlist.lines().get(0);
        SourceLine first = title.source();
        return title.part() == DeckLine.Part.TITLE && looksLikeCode(first.text().strip(), netlist)
                ? Stream.of(error(
                        Place.whole(first),
                        "the first line is the title and is not simulated",
                        "the simulator takes line 1 as the title whatever it holds, so this line is lost without a message",
                        "a title that begins with * as line 1, and this line below it"))
                : Stream.empty();
    }

    private static boolean looksLikeCode(String text, Netlist netlist) {
        return text.startsWith("+")
                || text.matches("(?i)\\.(?!title\\b)[a-z]\\w*\\b.*")
                || looksLikeElement(
                        List.of(text.split("[\\s,()]+")), netlist.circuit().nodes(), netlist.deck());
    }

    /** A word that could be an element's name, two that are nodes of this deck, and one that could be its value. */
    private static boolean looksLikeElement(List<String> words, Set<String> nodes, Scope deck) {
        return words.size() >= 4
                && words.get(0).matches("[A-Za-z]\\w*")
                && isNode(words.get(1), nodes)
                && isNode(words.get(2), nodes)
                && words.stream().skip(3).anyMatch(word -> isValue(word, nodes, deck));
    }

    private static boolean isNode(String word, Set<String> nodes) {
        return word.equals("0") || nodes.contains(word.toLowerCase(Locale.ROOT));
    }

    private static boolean isValue(String word, Set<String> nodes, Scope deck) {
        return SpiceNumber.of(word).isPresent()
                || word.startsWith("{")
                || word.contains("=")
                || word.matches(SOURCE_WORDS)
                || isNode(word, nodes)
                || deck.hasModel(word)
                || deck.scope(word).isPresent();
    }
}
