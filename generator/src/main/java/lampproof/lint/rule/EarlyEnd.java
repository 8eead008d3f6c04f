package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.SourceLine;

/** A line that begins with {@code @}, at which the simulator stops reading its file. */
final class EarlyEnd implements Rule {

    @Override
    public String name() {
        return "early-end";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.lines().stream()
                .map(line -> line.source())
                .filter(line -> line.text().stripLeading().startsWith("@"))
                .map(this::finding);
    }

    private LintFinding finding(SourceLine line) {
        int at = line.text().indexOf('@');
        return error(
                Place.of(line, at, at + 1),
                "the line begins with @",
                "the simulator reads no further in this file, without a message",
                "another character in the first column");
    }
}
