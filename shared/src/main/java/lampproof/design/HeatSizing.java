package lampproof.design;

import java.util.List;
import lampproof.design.Housing.Part;
import lampproof.fault.Finding;
import lampproof.fault.UserFault;
import lampproof.unit.Dimension;
import lampproof.unit.QuantityWriter;

/** Chooses the thermal resistances, the rated temperatures and the lives that the spec does not give. */
final class HeatSizing {

    private static final double HOUSING_RISE = 40;
    private static final double STRING_RISE = 20;
    private static final double LARGEST = 200;

    private final DesignValues values;
    private final Demand demand;

    HeatSizing(DesignValues values, Demand demand) {
        this.values = values;
        this.demand = demand;
    }

    Heat heat() {
        return new Heat(housing(), light(), capacitorLife());
    }

    private Housing housing() {
        double ambient = values.amount("ambient.temperature", "40 degC: under a ceiling", () -> 40);
        double coldest = values.amount("ambient.coldest", "-20 degC", () -> -20);
        double resistance = values.amount(
                "thermal.housing", "40 K of rise at the line power", () -> rise(HOUSING_RISE, demand.power()));
        return new Housing(ambient, coldest, resistance, parts());
    }

    private List<Part> parts() {
        return List.of(
                part("bridge", "silicon", 60, 150),
                part("inductor", "ferrite and its winding", 30, 125),
                part("switch", "silicon", 50, 150),
                part("diode", "silicon", 60, 150),
                output(),
                string());
    }

    private Part part(String name, String kind, double resistance, double rating) {
        return new Part(
                name,
                kind,
                values.amount(
                        "thermal." + name,
                        QuantityWriter.text(Dimension.THERMAL_RESISTANCE, resistance)
                                + ": small part on a crowded board",
                        () -> resistance),
                rating(name, kind, rating));
    }

    private Part output() {
        String kind = values.word(
                "output.kind", "film; ceramic below 100 V", demand.stringVoltage() < 100 ? "ceramic" : "film");
        double usual = kind.equals("ceramic") ? 125 : 105;
        return part("output", kind + " capacitor", 30, usual);
    }

    private Part string() {
        double power = demand.stringVoltage() * demand.string().current();
        return new Part(
                "string",
                "LEDs",
                values.amount(
                        "thermal.string",
                        "20 K of rise above the housing at the string power",
                        () -> rise(STRING_RISE, power)),
                rating("string", "LEDs", 120));
    }

    private double rating(String name, String kind, double usual) {
        return values.amount(name + ".temperature_rating", degrees(usual, "usual for " + kind), () -> usual);
    }

    private static double rise(double kelvins, double power) {
        return Rounding.twoDigits(Math.min(LARGEST, kelvins / power));
    }

    private Light light() {
        double share = values.amount("string.light_share", "a third of the string power leaves as light", () -> 0.33);
        double count = values.amount(
                "string.count",
                "one LED for each 3 V of string.voltage",
                () -> Math.max(1, Math.round(demand.stringVoltage() / 3)));
        double slope = values.amount(
                "string.temperature_slope",
                "-2.2 mV/K for each LED",
                () -> Rounding.twoDigits(Math.max(-5, -2.2e-3 * count)));
        return new Light(share, slope, life("life.", "LEDs, common practice", 50e3, 80, 30e3, 90));
    }

    private static String hours(double hours, String what) {
        return QuantityWriter.text(Dimension.DURATION, hours) + ": " + what;
    }

    private static String degrees(double temperature, String what) {
        return QuantityWriter.text(Dimension.TEMPERATURE, temperature) + ": " + what;
    }

    private LifePoints capacitorLife() {
        return life("life.capacitor_", "film or ceramic capacitor, common practice", 20e3, 85, 5e3, 105);
    }

    private LifePoints life(
            String group,
            String what,
            double coolHours,
            double coolTemperature,
            double hotHours,
            double hotTemperature) {
        LifePoints life = new LifePoints(
                values.amount(group + "hours_cool", hours(coolHours, what), () -> coolHours),
                values.amount(group + "temperature_cool", degrees(coolTemperature, what), () -> coolTemperature),
                values.amount(group + "hours_hot", hours(hotHours, what), () -> hotHours),
                values.amount(group + "temperature_hot", degrees(hotTemperature, what), () -> hotTemperature));
        if (!life.isShorterWhenHot()) {
            throw UserFault.badInput(Finding.of(
                    "life must be shorter at the hotter of two different temperatures",
                    group + "hours_cool, " + group + "hours_hot",
                    "give both hours and both temperatures, or none of them"));
        }
        return life;
    }
}
