package lampproof.lint.rule;

import java.util.Optional;
import java.util.stream.Stream;
import lampproof.lint.netlist.Analysis;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.Word;

/** Trapezoidal integration, which is also the default, in a deck with switches. */
final class TrapezoidalSwitching implements Rule {

    @Override
    public String name() {
        return "trapezoidal-switching";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Optional<Word> method = Options.value(netlist, "method");
        boolean gear = method.map(word -> word.is("gear")).orElse(false);
        return gear || !isSwitching(netlist)
                ? Stream.empty()
                : netlist.analyses().stream()
                        .filter(Analysis::isTransient)
                        .limit(1)
                        .map(analysis -> finding(method.map(Word::place)
                                .orElse(analysis.statement().whole())));
    }

    private static boolean isSwitching(Netlist netlist) {
        return netlist.circuit().elements().stream()
                .map(flat -> flat.element().kind())
                .anyMatch(kind -> kind == ElementKind.SWITCH || kind == ElementKind.CURRENT_SWITCH);
    }

    private LintFinding finding(Place place) {
        return warning(
                place,
                "a deck with switches is integrated by the trapezoidal rule",
                "it rings at hard edges: such decks stop with a time step too small, or end normally with more power out than in",
                ".options method=gear");
    }
}
