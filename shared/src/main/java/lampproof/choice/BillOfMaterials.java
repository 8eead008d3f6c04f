package lampproof.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lampproof.design.Design;
import lampproof.design.Dimming;
import lampproof.design.Driver;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.prediction.Solution;
import lampproof.prediction.loss.LossPart;
import lampproof.spec.Amount;

/**
 * The parts of a driver with their board area and cost.
 *
 * @param items one item a kind of part
 */
public record BillOfMaterials(List<BillItem> items) {

    private static final int MOST_SIDE_BY_SIDE = 4;

    /** Copies the items. */
    public BillOfMaterials {
        items = List.copyOf(items);
    }

    /**
     * The bill of materials of a solved design: semiconductors by volts times amperes of their ratings, capacitors by the energy at
     * their rated voltage, the inductor by area product, resistors by their loss.
     *
     * @throws UserFault when more output capacitors are needed than a lamp has room for
     */
    public static BillOfMaterials of(Design design, Solution solution, PartTable table) {
        Driver driver = solution.driver();
        double crest = Math.sqrt(2) * amount(design, "line.voltage").most();
        List<BillItem> items = new ArrayList<>(List.of(
                table.item("fuse", 1),
                table.item("choke", 1e3 * driver.filter().inductance()),
                table.item("damping", 0.05 * solution.losses().of(LossPart.FILTER)),
                table.item("filter capacitor", millijoules(driver.filter().capacitance(), crest)),
                table.item("bridge", 2 * crest * solution.line().peakCurrent()),
                table.item("bus capacitor", millijoules(driver.busCapacitance(), crest)),
                table.item("controller", 1),
                table.item("bias supply", solution.losses().of(LossPart.BIAS)),
                table.item("inductor", 1e12 * driver.inductor().winding().core().areaProduct()),
                table.item("switch", voltAmperes(design, "switch")),
                table.item("diode", voltAmperes(design, "diode")),
                table.item("sense", 2 * solution.losses().of(LossPart.SENSE)),
                output(design, table)));
        items.addAll(load(driver.dimming(), solution.losses().of(LossPart.BLEEDER), table));
        return new BillOfMaterials(items);
    }

    /** Only few capacitors fit side by side into a lamp. */
    private static BillItem output(Design design, PartTable table) {
        double capacitance = design.driver().output().capacitance();
        String part = "output " + design.values().word("output.kind").orElseThrow();
        BillItem item = table.item(
                part,
                millijoules(capacitance, amount(design, "output.voltage_rating").typical()));
        if (item.count() > MOST_SIDE_BY_SIDE) {
            throw UserFault.badInput(new Finding(
                    "more " + part + " capacitors than a lamp has room for",
                    "output.capacitance",
                    item.count() + " of " + item.housing(),
                    "at most " + MOST_SIDE_BY_SIDE,
                    "smooth the switching ripple only, or take a higher string voltage"));
        }
        return item;
    }

    private static List<BillItem> load(Dimming dimming, double loss, PartTable table) {
        List<BillItem> items = new ArrayList<>();
        if (dimming.bleederResistance() < DimmerLoad.NONE) {
            items.add(table.item("dimmer load", dimming.topUpCurrent() > 0 ? 0.5 * loss : 2 * loss));
            items.add(table.item("dimmer load switch", 1));
        }
        if (dimming.topUpCurrent() > 0) {
            items.add(table.item("holding current source", loss));
        }
        return items;
    }

    private static double millijoules(double capacitance, double voltage) {
        return 1e3 * 0.5 * capacitance * voltage * voltage;
    }

    private static double voltAmperes(Design design, String part) {
        return amount(design, part + ".voltage_rating").typical()
                * amount(design, part + ".current_rating").typical();
    }

    static Amount amount(Design design, String name) {
        return design.values().amount(name).orElseThrow();
    }

    /** The parts that cover the most board. */
    public BillItem largest() {
        return items.stream().max(Comparator.comparingDouble(BillItem::area)).orElseThrow();
    }

    /** How many parts there are. */
    public int count() {
        return items.stream().mapToInt(BillItem::count).sum();
    }

    /** Board area of all parts [m2]. */
    public double area() {
        return items.stream().mapToDouble(BillItem::area).sum();
    }

    /** Cost points of all parts [-]. */
    public double cost() {
        return items.stream().mapToDouble(BillItem::cost).sum();
    }
}
