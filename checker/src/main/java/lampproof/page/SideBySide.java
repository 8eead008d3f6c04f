package lampproof.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lampproof.choice.Candidate;
import lampproof.choice.Comparison;
import lampproof.choice.Trait;

/**
 * The finalists side by side, trait by trait.
 *
 * @param finalists the drivers
 * @param groups what they are compared in
 */
record SideBySide(List<Finalist> finalists, List<Group> groups) {

    /**
     * A driver.
     *
     * @param name its name
     * @param text its arrangement
     */
    record Finalist(String name, String text) {

        static Finalist of(Candidate candidate) {
            return new Finalist(
                    candidate.arrangement().topology().word(),
                    candidate.arrangement().text());
        }
    }

    /**
     * Traits that belong together.
     *
     * @param name what they belong to
     * @param rows a row for each trait
     */
    record Group(String name, List<Row> rows) {}

    /**
     * A trait.
     *
     * @param name its name
     * @param cells its value for each driver
     */
    record Row(String name, List<String> cells) {}

    static SideBySide of(Comparison comparison) {
        Map<String, List<Row>> groups = Trait.of(comparison.field().lamp()).stream()
                .collect(Collectors.groupingBy(
                        Trait::group,
                        LinkedHashMap::new,
                        Collectors.mapping(trait -> row(trait, comparison.finalists()), Collectors.toList())));
        return new SideBySide(
                comparison.finalists().stream().map(Finalist::of).toList(),
                groups.entrySet().stream()
                        .map(group -> new Group(group.getKey(), group.getValue()))
                        .toList());
    }

    private static Row row(Trait trait, List<Candidate> finalists) {
        return new Row(
                trait.name(),
                finalists.stream().map(trait::text).map(UnitSigns::signed).toList());
    }
}
