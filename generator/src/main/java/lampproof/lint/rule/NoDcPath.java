package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;

/** Nodes to which only capacitors lead, so that nothing sets their voltage at the operating point. */
final class NoDcPath implements Rule {

    @Override
    public String name() {
        return "no-dc-path";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        boolean operatingPoint = netlist.usesOperatingPoint();
        return FloatingIsland.of(netlist).stream()
                .filter(island -> island.feeder().isEmpty())
                .map(island -> operatingPoint ? undefined(island) : drifting(island));
    }

    private LintFinding undefined(FloatingIsland island) {
        return error(
                island.place(),
                island.words("has", "have") + " no DC path to node 0",
                "the operating point is not defined there: the simulator reports a singular matrix, invents a voltage or stops",
                remedy(island));
    }

    private LintFinding drifting(FloatingIsland island) {
        return warning(
                island.place(),
                island.words("has", "have") + " no DC path to node 0",
                "the voltage there follows from the initial conditions alone and drifts with every rounding error",
                remedy(island));
    }

    private static String remedy(FloatingIsland island) {
        return "a resistor of 1e9 to 1e12 ohm from " + island.nodes().get(0) + " to 0";
    }
}
