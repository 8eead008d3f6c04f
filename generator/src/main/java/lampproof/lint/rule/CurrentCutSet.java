package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;

/** Nodes that only current sources and capacitors connect with the rest, so that the current has nowhere to go. */
final class CurrentCutSet implements Rule {

    @Override
    public String name() {
        return "current-cut-set";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        boolean operatingPoint = netlist.usesOperatingPoint();
        return FloatingIsland.of(netlist).stream()
                .filter(island -> island.feeder().isPresent())
                .map(island -> operatingPoint ? undefined(island) : charging(island));
    }

    private LintFinding undefined(FloatingIsland island) {
        return error(
                island.place(),
                what(island),
                "at the operating point its current has nowhere to go: the simulator reports a singular matrix or invents a voltage",
                remedy(island));
    }

    private LintFinding charging(FloatingIsland island) {
        return warning(island.place(), what(island), "its current charges the capacitors without end", remedy(island));
    }

    private static String what(FloatingIsland island) {
        String source = island.feeder().orElseThrow().name().text();
        return island.words("is", "are") + " fed by " + source
                + " and cut off from node 0 by capacitors and current sources";
    }

    private static String remedy(FloatingIsland island) {
        return "a resistor or a switch from " + island.nodes().get(0) + " to 0 that can carry the current";
    }
}
