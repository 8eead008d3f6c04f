package lampproof.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lampproof.choice.Candidate;
import lampproof.choice.Characteristic;
import lampproof.choice.Comparison;

/**
 * The finalists side by side, characteristic by characteristic.
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
     * Characteristics that belong together.
     *
     * @param name what they belong to
     * @param rows a row for each characteristic
     */
    record Group(String name, List<Row> rows) {}

    /**
     * A characteristic.
     *
     * @param name its name
     * @param cells its value for each driver
     */
    record Row(String name, List<String> cells) {}

    static SideBySide of(Comparison comparison) {
        Map<String, List<Row>> groups = Characteristic.of(comparison.space().lamp()).stream()
                .collect(Collectors.groupingBy(
                        Characteristic::group,
                        LinkedHashMap::new,
                        Collectors.mapping(
                                characteristic -> row(characteristic, comparison.finalists()), Collectors.toList())));
        return new SideBySide(
                comparison.finalists().stream().map(Finalist::of).toList(),
                groups.entrySet().stream()
                        .map(group -> new Group(group.getKey(), group.getValue()))
                        .toList());
    }

    private static Row row(Characteristic characteristic, List<Candidate> finalists) {
        return new Row(
                characteristic.name(),
                finalists.stream().map(one -> text(characteristic, one)).toList());
    }

    /** Life is known to thousands of hours. */
    static String text(Characteristic characteristic, Candidate finalist) {
        return characteristic.unit().equals("h")
                ? ColumnText.text(characteristic.value().applyAsDouble(finalist), "h")
                : UnitSigns.signed(characteristic.text(finalist));
    }
}
