package lampproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lampproof.choice.Arrangement;
import lampproof.choice.Candidate;
import lampproof.choice.Characteristic;
import lampproof.choice.Comparison;
import lampproof.file.CsvText;
import lampproof.unit.PlainNumber;

/** Every candidate of a comparison as a table for a spreadsheet, in the order of the ranking. */
public final class CandidateTable {

    private static final List<String> FIRST = List.of(
            "index",
            "pareto",
            "keeps rules",
            "converter",
            "law",
            "smooths",
            "string voltage [V]",
            "string current [A]");

    private CandidateTable() {}

    /** The first line of every such table, by which lampproof knows its own again. */
    public static String heading() {
        return CsvText.of(header(), List.of()).strip();
    }

    /** The table, one row a candidate. */
    public static String text(Comparison comparison) {
        Set<Candidate> pareto = Set.copyOf(comparison.space().pareto());
        return CsvText.of(
                header(),
                comparison.ranked().stream()
                        .map(candidate -> cells(comparison, candidate, pareto.contains(candidate)))
                        .toList());
    }

    private static List<String> header() {
        List<String> header = new ArrayList<>(FIRST);
        Characteristic.ALL.forEach(characteristic -> header.add(
                characteristic.unit().isEmpty()
                        ? characteristic.name()
                        : characteristic.name() + " [" + characteristic.unit() + "]"));
        return header;
    }

    private static List<String> cells(Comparison comparison, Candidate candidate, boolean pareto) {
        Arrangement arrangement = candidate.arrangement();
        List<String> cells = new ArrayList<>(List.of(
                number(comparison.ranking().index(candidate)),
                yesOrNo(pareto),
                yesOrNo(candidate.keepsRules()),
                arrangement.topology().word(),
                arrangement.law().word(),
                arrangement.smoothing().word(),
                number(arrangement.voltage()),
                number(arrangement.current())));
        Characteristic.ALL.forEach(
                characteristic -> cells.add(number(characteristic.value().applyAsDouble(candidate))));
        return cells;
    }

    private static String yesOrNo(boolean so) {
        return so ? "yes" : "no";
    }

    private static String number(double value) {
        return PlainNumber.significant(value, 5);
    }
}
