package lampproof.lint.rule;

import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.SourceLine;

/** Two backslashes at the end of a line, which join the next line to it. */
final class BackslashContinuation implements Rule {

    @Override
    public String name() {
        return "backslash-continuation";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.lines().stream()
                .map(line -> line.source())
                .filter(line -> joins(line.text().strip()))
                .map(this::finding);
    }

    private static boolean joins(String text) {
        return text.endsWith("\\\\") && !text.startsWith("*") && !text.startsWith("$");
    }

    private LintFinding finding(SourceLine line) {
        int end = line.text().stripTrailing().length();
        return error(
                Place.of(line, end - 2, end),
                "two backslashes end the line",
                "ngspice joins the next line to it, even one that ends a control block; other simulators do not",
                "+ and a blank at the start of the next line");
    }
}
