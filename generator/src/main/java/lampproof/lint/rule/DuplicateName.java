package lampproof.lint.rule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.Model;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Parameter;
import lampproof.lint.netlist.Scope;
import lampproof.lint.netlist.Word;

/** One name given to two elements, models, subcircuits or parameters of one scope; letter case makes no difference. */
final class DuplicateName implements Rule {

    @Override
    public String name() {
        return "duplicate-name";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.scopes().flatMap(path -> check(path.scope()));
    }

    private Stream<LintFinding> check(Scope scope) {
        return Stream.of(
                        elements(scope.elements()),
                        doubles("model", names(scope.models().stream().map(Model::name)), "the first one is used"),
                        doubles("subcircuit", subcircuits(scope), "the first one is used"),
                        doubles("parameter", parameters(scope), "the last one is used"))
                .flatMap(findings -> findings);
    }

    private Stream<LintFinding> elements(List<Element> elements) {
        String why = "the simulator stops at the second one; others connect both, or keep one of them";
        return doubles("element", names(elements.stream().map(Element::name)), why);
    }

    private static List<Word> names(Stream<Word> names) {
        return names.toList();
    }

    private static List<Word> subcircuits(Scope scope) {
        return names(scope.scopes().stream().map(Scope::name).flatMap(Optional::stream));
    }

    private static List<Word> parameters(Scope scope) {
        return names(scope.parameters().stream().map(Parameter::name));
    }

    private Stream<LintFinding> doubles(String kind, List<Word> names, String why) {
        Map<String, Word> seen = new HashMap<>();
        return names.stream()
                .map(name -> finding(kind, seen.putIfAbsent(name.lower(), name), name, why))
                .filter(Objects::nonNull);
    }

    private LintFinding finding(String kind, Word first, Word second, String why) {
        if (first == null) {
            return null;
        }
        boolean sameCase = first.text().equals(second.text());
        String what = kind + " " + second.text()
                + (sameCase ? " is already defined in line " : " is " + first.text() + " again, defined in line ")
                + first.place().line().number();
        String reason = sameCase ? why : "letter case is ignored in names; " + why;
        return error(second.place(), what, reason, "another name, or only one of the two");
    }
}
