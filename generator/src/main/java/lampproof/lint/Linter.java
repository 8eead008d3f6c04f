package lampproof.lint;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.lint.netlist.DeckLine;
import lampproof.lint.netlist.Netlist;
import lampproof.lint.netlist.NetlistReader;
import lampproof.lint.netlist.SourceLine;
import lampproof.lint.rule.LintFinding;
import lampproof.lint.rule.Rule;
import lampproof.lint.rule.Rules;

/** Checks netlists against all rules. */
public final class Linter {

    /** Most findings of one rule: the rest of a long list is the same fault again [-]. */
    private static final int MOST = 50;

    private Linter() {}

    /** What is wrong with a netlist, in the order of its lines; each place is reported once for each rule. */
    public static List<LintFinding> check(Netlist netlist) {
        Map<SourceLine, Integer> order = order(netlist);
        return Rules.ALL.stream()
                .flatMap(rule -> check(rule, netlist))
                .sorted(Comparator.<LintFinding>comparingInt(
                                finding -> order.get(finding.place().line()))
                        .thenComparingInt(finding -> finding.place().from()))
                .toList();
    }

    /**
     * What is wrong with a netlist file, or with every deck ({@code .cir}) of a run folder.
     *
     * @throws UserFault when there is no such file, no deck in the folder, or a file that is too large to be a deck
     */
    public static List<LintFinding> check(Path fileOrRun) {
        return decks(fileOrRun).stream()
                .map(NetlistReader::read)
                .flatMap(netlist -> check(netlist).stream())
                .toList();
    }

    private static Stream<LintFinding> check(Rule rule, Netlist netlist) {
        Set<Object> told = new HashSet<>();
        return rule.check(netlist).filter(finding -> told.add(finding.place())).limit(MOST);
    }

    private static Map<SourceLine, Integer> order(Netlist netlist) {
        Map<SourceLine, Integer> order = new HashMap<>();
        for (DeckLine line : netlist.lines()) {
            order.putIfAbsent(line.source(), order.size());
        }
        return order;
    }

    private static List<Path> decks(Path fileOrRun) {
        if (!Files.isDirectory(fileOrRun)) {
            return List.of(fileOrRun);
        }
        try (Stream<Path> files = Files.list(fileOrRun)) {
            List<Path> decks = files.filter(Linter::isDeck).sorted().toList();
            if (decks.isEmpty()) {
                throw UserFault.badInput(Finding.of(
                        "the folder contains no deck", fileOrRun.toString(), "name a run folder with .cir files"));
            }
            return decks;
        } catch (IOException unreadable) {
            throw UserFault.badInput(
                    Finding.of("the folder cannot be read", fileOrRun.toString(), "check its permissions"));
        }
    }

    private static boolean isDeck(Path file) {
        return Files.isRegularFile(file)
                && file.toString().toLowerCase(Locale.ROOT).endsWith(".cir");
    }
}
