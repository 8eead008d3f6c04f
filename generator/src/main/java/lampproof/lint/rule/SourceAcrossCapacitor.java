package lampproof.lint.rule;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lampproof.lint.netlist.Analysis;
import lampproof.lint.netlist.Element;
import lampproof.lint.netlist.ElementKind;
import lampproof.lint.netlist.FlatElement;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Parameter;
import lampproof.lint.netlist.ScopePath;
import lampproof.lint.netlist.SpiceNumber;
import lampproof.lint.netlist.Word;

/** A capacitor that starts at another voltage than the sources straight across it, under {@code uic}. */
final class SourceAcrossCapacitor implements Rule {

    /** Steps below this are taken as rounding [V]. */
    private static final double SMALL = 1e-3;

    @Override
    public String name() {
        return "source-across-capacitor";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        if (netlist.analyses().stream().noneMatch(Analysis::skipsOperatingPoint)) {
            return Stream.empty();
        }
        StartVoltages starts = StartVoltages.of(netlist);
        return netlist.circuit().elements().stream()
                .filter(flat -> flat.element().kind() == ElementKind.CAPACITOR
                        && flat.nodes().size() == 2)
                .filter(flat -> isCharged(flat, starts, netlist))
                .map(flat -> finding(flat.element()));
    }

    private static boolean isCharged(FlatElement flat, StartVoltages starts, Netlist netlist) {
        OptionalDouble source = starts.forced(flat.nodes().get(0), flat.nodes().get(1));
        OptionalDouble capacitor = initial(flat, starts, netlist);
        return source.isPresent()
                && capacitor.isPresent()
                && Math.abs(source.getAsDouble() - capacitor.getAsDouble()) > SMALL;
    }

    /** The capacitor's voltage at the start: its own, or that of its nodes, or none; empty when not a plain number. */
    private static OptionalDouble initial(FlatElement flat, StartVoltages starts, Netlist netlist) {
        ScopePath deck = new ScopePath(List.of(netlist.deck()));
        return flat.element()
                .parameter("ic")
                .map(Parameter::value)
                .map(word -> SpiceNumber.valueOf(word, deck))
                .orElseGet(() -> starts.given(flat.nodes().get(0), flat.nodes().get(1)));
    }

    private LintFinding finding(Element capacitor) {
        Word name = capacitor.name();
        return error(
                capacitor.statement().whole(),
                name.text() + " lies straight across a source that does not start at the capacitor's voltage",
                "uic skips the operating point, so the first step charges the capacitor with an impulse of current that looks like an inrush",
                "the capacitor's ic= at the source's first value, or the resistance that the circuit really has in between");
    }
}
