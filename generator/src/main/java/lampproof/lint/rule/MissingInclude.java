package lampproof.lint.rule;

import java.util.Optional;
import java.util.stream.Stream;
import lampproof.lint.netlist.Include;
import lampproof.lint.netlist.Netlist;

/** A file that the deck includes and that cannot be read. */
final class MissingInclude implements Rule {

    @Override
    public String name() {
        return "missing-include";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        return netlist.includes().stream().flatMap(include -> check(include).stream());
    }

    private Optional<LintFinding> check(Include include) {
        return switch (include.outcome()) {
            case READ, NOT_LOOKED_AT, OUTSIDE -> Optional.empty();
            case MISSING ->
                Optional.of(finding(
                        include,
                        "there is no file " + include.path(),
                        "the simulator stops",
                        "a file name relative to the deck's folder, and the file beside the deck"));
            case SECTION_MISSING ->
                Optional.of(finding(
                        include,
                        "the library " + include.path() + " has no such section",
                        "the simulator stops",
                        "the name of a section that begins with .lib NAME and ends with .endl"));
            case AMBIGUOUS ->
                Optional.of(finding(
                        include,
                        include.path() + " is the name of two files or of two sections",
                        "which of them the simulator reads depends on the folder in which it is started",
                        "the name of one file, or of one section, that nothing else has"));
            case LOOP ->
                Optional.of(finding(
                        include,
                        include.path() + " includes itself",
                        "the simulator crashes or hangs",
                        "each file once"));
            case TOO_MUCH ->
                Optional.of(finding(
                        include,
                        include.path() + " is one file too many, or too large",
                        "no real deck includes 200 files, 20 levels or 8 million characters",
                        "the models that the deck uses, in one file"));
        };
    }

    private LintFinding finding(Include include, String what, String why, String write) {
        return error(include.place(), what, why, write);
    }
}
