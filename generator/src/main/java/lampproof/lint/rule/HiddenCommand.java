package lampproof.lint.rule;

import java.util.Locale;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.SourceLine;

/** A command in what looks like a comment: behind {@code *#}, or in a file that is a script by its first line. */
final class HiddenCommand implements Rule {

    @Override
    public String name() {
        return "hidden-command";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        SourceLine first = netlist.lines().get(0).source();
        boolean script = first.text().strip().toLowerCase(Locale.ROOT).startsWith("*ng_script");
        Stream<LintFinding> scripts = script ? Stream.of(script(first)) : Stream.empty();
        Stream<LintFinding> hidden = netlist.lines().stream()
                .skip(1)
                .map(line -> line.source())
                .filter(line -> line.text().stripLeading().startsWith("*#"))
                .map(this::hidden);
        return Stream.concat(scripts, hidden);
    }

    private LintFinding hidden(SourceLine line) {
        int at = line.text().indexOf("*#");
        return error(
                line.place(at, at + 2),
                "a command is hidden in a comment",
                "ngspice runs what stands behind *# as a command, although it looks like a comment",
                "the command in the control block, or the comment with a blank behind the *");
    }

    private LintFinding script(SourceLine line) {
        return error(
                line.whole(),
                "the file is a script of commands, not a netlist",
                "ngspice runs every line of a file that begins so as a command",
                "a title that begins with * and a blank");
    }
}
