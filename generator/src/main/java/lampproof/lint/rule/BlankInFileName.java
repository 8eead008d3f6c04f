package lampproof.lint.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.lint.netlist.Command;
import lampproof.lint.netlist.Directive;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.Word;

/** A file name with blanks or, where the simulator would make them part of the name, quotes. */
final class BlankInFileName implements Rule {

    private static final String NAME = "a file name of letters, digits, - and _";
    private static final Set<String> WRITERS = Set.of("wrdata", "write");
    private static final String DATA_FILE = "(?i)[\\w-]+\\.(?:csv|txt|dat|data|out|raw|tsv|prn|log)";

    @Override
    public String name() {
        return "blank-in-file-name";
    }

    @Override
    public Stream<LintFinding> check(Netlist netlist) {
        Stream<LintFinding> written = netlist.commands().stream()
                .filter(command -> command.isOneOf(WRITERS))
                .flatMap(command -> written(command).stream());
        Stream<LintFinding> included = netlist.directives().stream()
                .filter(directive -> directive.keyword().lower().startsWith(".inc"))
                .flatMap(directive -> included(directive).stream());
        return Stream.concat(written, included);
    }

    private Optional<LintFinding> written(Command command) {
        List<Word> words = command.arguments();
        if (!words.isEmpty() && words.get(0).text().matches("[^\"']*+[\"'](?s:.*)")) {
            return Optional.of(error(
                    words.get(0).place(),
                    "the quotes become part of the file name",
                    "the simulator writes a file whose name contains them, and the result is not found",
                    NAME + ", without quotes"));
        }
        boolean blank = words.size() > 1 && words.get(1).text().matches(DATA_FILE);
        return blank ? Optional.of(parted(words.get(1))) : Optional.empty();
    }

    private LintFinding parted(Word second) {
        return error(
                second.place(),
                "the blank before " + second.text() + " ends the file name",
                "the simulator takes this word as a vector that does not exist and writes no file, with one line in the log",
                NAME);
    }

    private Optional<LintFinding> included(Directive directive) {
        List<Word> all = directive.statement().wordsBetweenBlanks();
        List<Word> words = all.subList(1, all.size());
        boolean quoted = !words.isEmpty() && words.get(0).text().matches("(?s)[\"']\\S*+\\s.*[\"']");
        if (quoted) {
            return Optional.of(warning(
                    words.get(0).place(),
                    "the file name holds a blank",
                    "ngspice reads it in quotes; other simulators end the name at the blank",
                    NAME));
        }
        return words.size() > 1
                ? Optional.of(error(
                        words.get(1).place(),
                        "the blank before " + words.get(1).text() + " ends the file name",
                        "the simulator looks for a file of the shorter name and stops",
                        NAME))
                : Optional.empty();
    }
}
