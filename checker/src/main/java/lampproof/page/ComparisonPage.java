package lampproof.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lampproof.choice.Candidate;
import lampproof.choice.Characteristic;
import lampproof.choice.Comparison;
import lampproof.choice.Criterion;
import lampproof.choice.Difference;
import lampproof.choice.Differences;
import lampproof.choice.WeightVariation;
import lampproof.compare.RunVerdict;
import lampproof.design.Design;
import lampproof.rule.RuleVerdict;
import lampproof.unit.Engineering;
import lampproof.unit.PlainNumber;

/** The page of a comparison: the recommendation, both drivers side by side, why they differ, the design space, what moves them. */
public final class ComparisonPage {

    private final Comparison comparison;
    private final List<Candidate> finalists;

    private ComparisonPage(Comparison comparison) {
        this.comparison = comparison;
        this.finalists = comparison.finalists();
    }

    /**
     * The page as one text in HTML.
     *
     * @param comparison what was compared
     * @param verdicts what the simulations of the finalists say, in their order; none when nothing was simulated
     * @param program name and version of this program
     */
    public static String html(Comparison comparison, List<RunVerdict> verdicts, String program) {
        return PageTemplates.fill("comparison.ftlh", new ComparisonPage(comparison).model(verdicts, program));
    }

    private Map<String, Object> model(List<RunVerdict> verdicts, String program) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("recommendation", comparison.recommendation());
        model.put("facts", facts(program));
        model.put("finalists", finalists.stream().map(ComparisonPage::finalist).toList());
        model.put("verdicts", verdicts.stream().map(ComparisonPage::verdict).toList());
        model.put("groups", groups());
        model.put("rules", rules());
        model.put("broken", broken());
        model.put(
                "reweighed",
                WeightVariation.of(comparison).stream()
                        .map(ComparisonPage::reweighed)
                        .toList());
        model.put(
                "differences",
                Differences.of(comparison).stream()
                        .map(ComparisonPage::difference)
                        .toList());
        model.put("losses", FinalistLosses.of(finalists));
        model.put("plots", FinalistPlots.of(finalists));
        model.put("field", field());
        model.put("criteria", criteria());
        model.put("counts", comparison.space().counts());
        model.put("tornados", finalists.stream().map(Tornado::of).toList());
        model.put("reasons", reasons());
        model.put("setAside", comparison.space().lamp().setAside());
        return model;
    }

    private List<Map<String, Object>> facts(String program) {
        Design design = comparison.winner().design();
        return List.of(
                fact("Line", PartRows.value(design, "line.voltage") + ", " + PartRows.value(design, "line.frequency")),
                fact(
                        "String power",
                        Engineering.digits(3).text(comparison.space().lamp().power(), "W")),
                fact("Dimmer", PartRows.value(design, "dimmer.edge")),
                fact("Air around the lamp", PartRows.value(design, "ambient.temperature")),
                fact(
                        "Arrangements that work",
                        String.valueOf(comparison.space().candidates().size())),
                fact("Program", program));
    }

    private static Map<String, Object> fact(String name, String value) {
        return Map.of("name", name, "value", value);
    }

    private static Map<String, Object> finalist(Candidate candidate) {
        return Map.of(
                "name", candidate.arrangement().topology().word(),
                "text", candidate.arrangement().text(),
                "circuit", CircuitValues.of(candidate.design()));
    }

    private static Map<String, Object> verdict(RunVerdict verdict) {
        return Map.of(
                "name", verdict.name(),
                "outcome", verdict.worst().words(),
                "sentence", VerdictSentence.of(verdict));
    }

    /** Every characteristic, in groups. */
    private List<Map<String, Object>> groups() {
        Map<String, List<Map<String, Object>>> groups = new LinkedHashMap<>();
        for (Characteristic characteristic :
                Characteristic.of(comparison.space().lamp())) {
            groups.computeIfAbsent(characteristic.group(), group -> new ArrayList<>())
                    .add(row(characteristic));
        }
        return groups.entrySet().stream()
                .map(group -> Map.<String, Object>of("name", group.getKey(), "rows", group.getValue()))
                .toList();
    }

    private Map<String, Object> row(Characteristic characteristic) {
        return Map.of(
                "name", characteristic.name(),
                "cells",
                        finalists.stream()
                                .map(characteristic::text)
                                .map(ComparisonPage::signed)
                                .toList());
    }

    private List<Map<String, Object>> rules() {
        List<Map<String, Object>> rules = new ArrayList<>();
        for (Candidate finalist : finalists) {
            for (RuleVerdict verdict : finalist.verdicts()) {
                rules.add(Map.of(
                        "finalist", finalist.arrangement().topology().word(),
                        "subject", verdict.subject(),
                        "kept", verdict.pass(),
                        "word", verdict.outcome().word(),
                        "rule", verdict.rule(),
                        "number", verdict.number()));
            }
        }
        return rules;
    }

    /** The rules that the finalists break, and how many drivers of the design space do not. */
    private List<String> broken() {
        return finalists.stream()
                .flatMap(finalist -> finalist.verdicts().stream())
                .filter(verdict -> !verdict.pass())
                .map(verdict -> verdict.subject() + ", " + verdict.rule())
                .distinct()
                .map(this::broken)
                .toList();
    }

    private String broken(String rule) {
        List<Candidate> candidates = comparison.space().candidates();
        long keep = candidates.stream()
                .filter(candidate -> candidate.verdicts().stream()
                        .filter(verdict -> rule.equals(verdict.subject() + ", " + verdict.rule()))
                        .allMatch(RuleVerdict::pass))
                .count();
        String breakers = finalists.stream()
                .flatMap(finalist -> finalist.verdicts().stream()
                        .filter(verdict -> !verdict.pass())
                        .filter(verdict -> rule.equals(verdict.subject() + ", " + verdict.rule()))
                        .map(verdict -> finalist.arrangement().topology().word() + " " + verdict.number()))
                .collect(Collectors.joining("; "));
        return rule + ": " + breakers + ". Kept by " + keep + " of the " + candidates.size() + " drivers that work";
    }

    private static Map<String, Object> reweighed(WeightVariation one) {
        return Map.of(
                "weighing", one.weighing(),
                "winner", one.comparison().winner().arrangement().text(),
                "indices", one.indices());
    }

    private static Map<String, Object> difference(Difference difference) {
        return Map.of("subject", difference.subject(), "text", signed(difference.text()));
    }

    private List<Map<String, Object>> field() {
        Set<Candidate> pareto = Set.copyOf(comparison.space().pareto());
        return comparison.bestOfEach().stream()
                .map(candidate -> Map.<String, Object>of(
                        "index", PlainNumber.fixed(comparison.ranking().index(candidate), 3),
                        "text", candidate.arrangement().text(),
                        "finalist", finalists.contains(candidate),
                        "pareto", pareto.contains(candidate),
                        "rules", candidate.keepsRules(),
                        "cells", cells(candidate)))
                .toList();
    }

    /** Each criterion with the share of the index that it leaves. */
    private List<Map<String, Object>> cells(Candidate candidate) {
        List<Map<String, Object>> cells = new ArrayList<>();
        for (Criterion criterion : Criterion.values()) {
            cells.add(Map.of(
                    "name", criterion.word(),
                    "value",
                            signed(Characteristic.named(criterion.characteristic())
                                    .text(candidate)),
                    "ratio", PlainNumber.fixed(comparison.ranking().ratio(criterion, candidate), 2)));
        }
        return cells;
    }

    private List<Map<String, Object>> criteria() {
        List<Map<String, Object>> criteria = new ArrayList<>();
        for (Criterion criterion : Criterion.values()) {
            criteria.add(Map.of(
                    "name", criterion.word(),
                    "meaning", criterion.meaning(),
                    "weight", PlainNumber.significant(comparison.weights().of(criterion), 3)));
        }
        return criteria;
    }

    private List<Map<String, Object>> reasons() {
        return comparison.space().reasons().entrySet().stream()
                .map(reason -> Map.<String, Object>of("text", reason.getKey(), "count", reason.getValue()))
                .toList();
    }

    /** Micro, square and degree by their signs. */
    private static String signed(String text) {
        return text.replace("mm2", "mm\u00b2")
                .replace("mm4", "mm\u2074")
                .replace("degC", "\u00b0C")
                .replaceAll(" u(?=[A-Z])", " \u00b5");
    }
}
