package lampproof.lint.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import lampproof.lint.netlist.DeckLine;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;

/** A {@code .control} without its {@code .endc}, or the other way round. */
final class ControlBlock implements Rule {

    @Override
    public String name() {
        return "control-block";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        List<LintFinding> findings = new ArrayList<>();
        Optional<DeckLine> open = Optional.empty();
        for (DeckLine line : netlist.lines()) {
            if (begins(line, ".control")) {
                open.ifPresent(before -> findings.add(finding(line, "a control block begins inside another")));
                open = Optional.of(line);
            } else if (begins(line, ".endc")) {
                if (open.isEmpty()) {
                    findings.add(finding(line, "no control block is open here"));
                }
                open = Optional.empty();
            }
        }
        open.ifPresent(line -> findings.add(finding(line, "the control block has no end")));
        return findings.stream();
    }

    private static boolean begins(DeckLine line, String keyword) {
        return !line.continued() && line.code().toLowerCase(Locale.ROOT).startsWith(keyword);
    }

    private LintFinding finding(DeckLine line, String what) {
        return error(
                Place.whole(line.source()),
                what,
                "the simulator then reads comments of the whole deck as it reads them in a control block, and stops or runs them",
                "one .endc behind each .control, and no .control before it");
    }
}
