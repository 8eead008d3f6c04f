package lampproof.lint.rule;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Place;
import lampproof.lint.netlist.SourceLine;

/**
 * A command in what looks like a comment or a title: behind {@code *#}, behind another mark and {@code #}, in a file that is a
 * script by its first line, or behind a title that is longer than the simulator reads.
 */
final class HiddenCommand implements Rule {

    /** Longest title that ngspice reads as one line [bytes]. */
    private static final int TITLE = 4998;

    /** ngspice takes a line that begins with one of these marks for a comment, and puts a star in the mark's place. */
    private static final Pattern HIDDEN = Pattern.compile("[ \t]*+[*=\\[\\]?()&%$\"!:,;\f]#.*");

    @Override
    public String name() {
        return "hidden-command";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        SourceLine first = netlist.lines().get(0).source();
        Stream<LintFinding> hidden = netlist.lines().stream()
                .skip(1)
                .map(line -> line.source())
                .filter(line -> HIDDEN.matcher(line.text()).matches())
                .map(this::hidden);
        return Stream.concat(title(first), hidden);
    }

    private Stream<LintFinding> title(SourceLine first) {
        if (first.text().strip().toLowerCase(Locale.ROOT).startsWith("*ng_script")) {
            return Stream.of(script(first));
        }
        boolean tooLong = first.text().getBytes(StandardCharsets.UTF_8).length > TITLE;
        return tooLong ? Stream.of(tooLong(first)) : Stream.empty();
    }

    private LintFinding hidden(SourceLine line) {
        int at = line.text().indexOf('#') - 1;
        String mark = line.text().substring(at, at + 2);
        return error(
                Place.of(line, at, at + 2),
                "a command is hidden in a comment",
                "ngspice runs what stands behind " + mark + " as a command, although it looks like a comment",
                "the command in the control block, or the comment with a blank behind the *");
    }

    private LintFinding script(SourceLine line) {
        return error(
                Place.whole(line),
                "the file is a script of commands, not a netlist",
                "ngspice runs every line of a file that begins so as a command",
                "a title that begins with * and a blank");
    }

    private LintFinding tooLong(SourceLine line) {
        return error(
                Place.of(line, 0, 1),
                "the title is longer than the simulator reads",
                "ngspice takes what follows the first " + TITLE + " bytes for the next line, which may be a command",
                "a title of less than " + TITLE + " bytes");
    }
}
