package lampproof.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lampproof.choice.Candidate;
import lampproof.choice.Characteristic;
import lampproof.prediction.LineCorners;

/**
 * The finalists in a dozen values each.
 *
 * @param names names of the drivers
 * @param rows a row for each value
 */
record FinalistHeadline(List<String> names, List<Row> rows) {

    /**
     * A value of every finalist.
     *
     * @param name its name
     * @param cells the value of each driver
     */
    record Row(String name, List<String> cells) {}

    static FinalistHeadline of(List<Candidate> finalists) {
        List<List<Fact>> columns =
                finalists.stream().map(FinalistHeadline::column).toList();
        return new FinalistHeadline(
                finalists.stream()
                        .map(one -> one.arrangement().topology().word())
                        .toList(),
                IntStream.range(0, columns.get(0).size())
                        .mapToObj(k -> new Row(
                                columns.get(0).get(k).name(),
                                columns.stream()
                                        .map(column -> column.get(k).value())
                                        .toList()))
                        .toList());
    }

    private static List<Fact> column(Candidate finalist) {
        List<Fact> facts = new ArrayList<>(HeadlineRows.of(LineCorners.only(finalist.solution())));
        facts.add(new Fact("Board area", text(finalist, "board area")));
        facts.add(new Fact("Cost", text(finalist, "cost")));
        return facts;
    }

    private static String text(Candidate finalist, String characteristic) {
        return UnitSigns.signed(Characteristic.named(characteristic).text(finalist));
    }
}
