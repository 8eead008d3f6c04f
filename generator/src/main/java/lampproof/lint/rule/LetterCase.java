package lampproof.lint.rule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Scope;
import lampproof.lint.netlist.Word;

/** One node written in two ways that differ only in letter case. */
final class LetterCase implements Rule {

    @Override
    public String name() {
        return "letter-case";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.scopes().flatMap(path -> check(path.scope()));
    }

    private Stream<LintFinding> check(Scope scope) {
        Map<String, Word> first = new HashMap<>();
        Set<String> spellings = new HashSet<>();
        List<LintFinding> findings = new ArrayList<>();
        for (Word node : nodes(scope)) {
            Word known = first.computeIfAbsent(node.lower(), absent -> node);
            if (spellings.add(node.text()) && !known.text().equals(node.text()) && !node.is("gnd")) {
                findings.add(finding(known, node));
            }
        }
        return findings.stream();
    }

    private static List<Word> nodes(Scope scope) {
        List<Word> nodes = new ArrayList<>(scope.ports());
        for (Element element : scope.elements()) {
            nodes.addAll(element.nodes());
            nodes.addAll(element.controls());
            element.expression().ifPresent(expression -> nodes.addAll(expression.nodes()));
        }
        return nodes;
    }

    private LintFinding finding(Word known, Word node) {
        return warning(
                node.place(),
                "node " + node.text() + " is the same node as " + known.text() + " in line "
                        + known.place().line().number(),
                "letter case is ignored, so two nodes that were meant to be apart are connected",
                known.text() + " where the same node is meant, another name where not");
    }
}
