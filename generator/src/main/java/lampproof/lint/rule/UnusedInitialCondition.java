package lampproof.lint.rule;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.Analysis;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Parameter;

/** An {@code ic=} on a capacitor or inductor of a deck whose transient analyses do not say {@code uic}. */
final class UnusedInitialCondition implements Rule {

    private static final Set<ElementKind> STORES = Set.of(ElementKind.CAPACITOR, ElementKind.INDUCTOR);

    @Override
    public String name() {
        return "unused-initial-condition";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        List<Analysis> transients =
                netlist.analyses().stream().filter(Analysis::isTransient).toList();
        boolean unused = !transients.isEmpty() && transients.stream().noneMatch(Analysis::skipsOperatingPoint);
        return unused ? netlist.elements().flatMap(this::check) : Stream.empty();
    }

    private Stream<LintFinding> check(Element element) {
        return STORES.contains(element.kind())
                ? element.parameter("ic").stream().map(this::finding)
                : Stream.empty();
    }

    private LintFinding finding(Parameter initial) {
        return error(
                initial.name().place(),
                "ic= without uic has no effect",
                "the simulator starts from the operating point and drops the value without a message",
                "uic at the end of the .tran line, or .ic v(node)=value in place of ic=");
    }
}
