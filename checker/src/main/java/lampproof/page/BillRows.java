package lampproof.page;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import lampproof.choice.BillItem;
import lampproof.choice.BillOfMaterials;
import lampproof.fault.UserFault;
import lampproof.file.CsvText;
import lampproof.rule.RatedUse;
import lampproof.rule.RatedUses;
import lampproof.unit.PlainNumber;

/**
 * The bill of materials of a run.
 *
 * @param items a row for each kind of part
 * @param total the sum of counts, areas and costs
 * @param missing why there is none; empty otherwise
 */
public record BillRows(List<Row> items, Total total, String missing) {

    private static final List<String> HEADER =
            List.of("part", "value", "rating", "package", "count", "area_mm2", "cost_points", "margin_percent");

    /**
     * Parts of one kind.
     *
     * @param letter letter of the part in charts of losses
     * @param part the part
     * @param value its value; empty when a spec has none
     * @param rating its ratings; empty when a spec has none
     * @param size package and size
     * @param margin least margin of its ratings over the greatest use [%]; empty without a rating
     */
    record Row(String letter, String part, String value, String rating, Size size, String margin) {

        private Row signed() {
            return new Row(letter, part, signed(value), signed(rating), size, margin);
        }

        /** A value and its unit stay on one line. */
        private static String signed(String texts) {
            return UnitSigns.signed(texts).replace(' ', '\u00a0').replace(",\u00a0", ", ");
        }
    }

    /**
     * What the parts of a kind cover and cost together.
     *
     * @param housing their package
     * @param count how many
     * @param area board area [mm2]
     * @param cost cost points
     */
    record Size(String housing, int count, String area, String cost) {

        static Size of(BillItem item) {
            return new Size(item.housing(), item.count(), squareMillimetres(item.area()), points(item.cost()));
        }
    }

    /**
     * All parts together.
     *
     * @param count how many
     * @param area board area [mm2]
     * @param cost cost points
     */
    record Total(int count, String area, String cost) {}

    /** The bill of a run; it is missing when its capacitors have no room in a lamp. */
    public static BillRows of(RunRecord run) {
        try {
            BillOfMaterials bill = BillOfMaterials.of(run.design(), run.solution(), run.parts());
            List<RatedUse> uses = RatedUses.of(run.corners());
            return new BillRows(
                    bill.items().stream().map(item -> row(run, uses, item)).toList(),
                    new Total(bill.count(), squareMillimetres(bill.area()), points(bill.cost())),
                    "");
        } catch (UserFault fault) {
            return new BillRows(List.of(), new Total(0, "", ""), fault.getMessage());
        }
    }

    /** The bill for a page, with the signs of units. */
    BillRows signed() {
        return new BillRows(items.stream().map(Row::signed).toList(), total, missing);
    }

    private static Row row(RunRecord run, List<RatedUse> uses, BillItem item) {
        BillPart part = BillPart.of(item.part());
        String margin = uses.stream()
                .filter(use -> part.ratingRows().contains(use.name()))
                .min(Comparator.comparingDouble(RatedUse::margin))
                .map(use -> PlainNumber.fixed(100 * use.margin(), 0))
                .orElse("");
        return new Row(
                LossBar.letter(part.loss()),
                item.part(),
                texts(run, part.valueRows()),
                texts(run, part.ratingRows()),
                Size.of(item),
                margin);
    }

    private static String texts(RunRecord run, List<String> names) {
        return names.stream()
                .map(name -> PartRows.plain(run.design(), name))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String squareMillimetres(double area) {
        return PlainNumber.fixed(1e6 * area, 0);
    }

    private static String points(double cost) {
        return PlainNumber.fixed(cost, 1);
    }

    /** The bill for a spreadsheet; the heading alone when it is missing. */
    public String csv() {
        return CsvText.of(HEADER, items.stream().map(BillRows::cells).toList());
    }

    private static List<String> cells(Row row) {
        return List.of(
                row.part(),
                row.value(),
                row.rating(),
                row.size().housing(),
                Integer.toString(row.size().count()),
                row.size().area(),
                row.size().cost(),
                row.margin());
    }
}
