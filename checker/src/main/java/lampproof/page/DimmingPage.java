package lampproof.page;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lampproof.compare.Outcome;
import lampproof.compare.SettingVerdict;
import lampproof.design.Design;
import lampproof.dimming.DimmingCurve;
import lampproof.dimming.DimmingFigure;
import lampproof.dimming.DimmingFigures;
import lampproof.dimming.DimmingPoint;
import lampproof.page.RunRecord.Provenance;
import lampproof.unit.PlainNumber;

/** The page of a dimming curve. */
public final class DimmingPage {

    private final DimmingCurve curve;
    private final Design design;
    private final List<SettingVerdict> simulated;
    private final Provenance provenance;

    private DimmingPage(DimmingCurve curve, Design design, List<SettingVerdict> simulated, Provenance provenance) {
        this.curve = curve;
        this.design = design;
        this.simulated = simulated.stream()
                .sorted(Comparator.comparingDouble(SettingVerdict::degrees))
                .toList();
        this.provenance = provenance;
    }

    /**
     * The page as one text in HTML.
     *
     * @param curve what it shows
     * @param design the driver and where its values came from
     * @param simulated settings that were simulated
     * @param provenance who made it
     */
    public static String html(
            DimmingCurve curve, Design design, List<SettingVerdict> simulated, Provenance provenance) {
        DimmingPage page = new DimmingPage(curve, design, simulated, provenance);
        return PageTemplates.fill("dimming.ftlh", page.model());
    }

    private Map<String, Object> model() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("edge", curve.dimming().edge().word());
        model.put("facts", facts());
        model.put("good", good());
        model.put("heading", heading());
        model.put("sentence", sentence());
        model.put(
                "figures",
                DimmingFigures.of(curve).stream().map(DimmingPage::figure).toList());
        model.put(
                "off",
                DimmingFigures.off(curve).stream().map(DimmingPage::figure).toList());
        model.put("plots", new DimmingPlots(curve, simulated).models());
        model.put("settings", settings());
        model.put("simulated", simulated.stream().map(this::setting).toList());
        return model;
    }

    private List<Map<String, Object>> facts() {
        return List.of(
                fact("Converter", PartRows.value(design, "driver.topology")),
                fact("Control law", PartRows.value(design, "driver.control")),
                fact("Line", PartRows.value(design, "line.voltage") + ", " + PartRows.value(design, "line.frequency")),
                fact(
                        "String",
                        PartRows.value(design, "string.voltage") + ", " + PartRows.value(design, "string.current")),
                fact(
                        "Dimmer",
                        PartRows.value(design, "dimmer.edge") + " edge, "
                                + PartRows.value(design, "dimmer.capacitance")),
                fact(
                        "Bleeder",
                        PartRows.value(design, "bleeder.resistance") + ", holds "
                                + PartRows.value(design, "bleeder.hold_current")),
                fact("Program", provenance.program()),
                fact("Made", provenance.date()));
    }

    private static Map<String, Object> fact(String name, String value) {
        return Map.of("name", name, "value", value);
    }

    private boolean good() {
        return curve.misfires().isEmpty()
                && curve.flickers().isEmpty()
                && curve.stepBack().isEmpty()
                && simulationsAgree();
    }

    private boolean simulationsAgree() {
        return simulated.stream().allMatch(setting -> setting.run().worst() == Outcome.AGREES);
    }

    private String heading() {
        if (!curve.misfires().isEmpty()) {
            return "The triac goes out";
        }
        if (!curve.flickers().isEmpty()) {
            return "Half cycles are not alike";
        }
        return curve.stepBack().isPresent() ? "Dims with a step back" : "Dims without a step back";
    }

    private String sentence() {
        return triacSentence()
                + (simulated.isEmpty() ? "Nothing here has been simulated; --prove does." : simulatedSentence());
    }

    private String triacSentence() {
        long watched = curve.down().stream().filter(curve::isWatched).count();
        return watched == 0
                ? ""
                : "Of " + watched + " settings the triac goes out at "
                        + curve.misfires().size() + ". ";
    }

    private String simulatedSentence() {
        long agree = simulated.stream()
                .filter(setting -> setting.run().worst() == Outcome.AGREES)
                .count();
        return simulated.size() + " settings were simulated; at " + agree + " of them every compared figure agrees.";
    }

    private static Map<String, Object> figure(DimmingFigure figure) {
        return Map.of(
                "name", figure.name(),
                "value", text(figure.value(), figure.unit()),
                "note", figure.note(),
                "definition", figure.definition());
    }

    private static String text(OptionalDouble value, String unit) {
        return value.isPresent() ? ColumnText.about(value.getAsDouble(), unit).text(value.getAsDouble()) : "";
    }

    private List<Map<String, Object>> settings() {
        int last = curve.up().size() - 1;
        return IntStream.rangeClosed(0, last)
                .mapToObj(k -> setting(curve.down().get(k), curve.up().get(last - k)))
                .toList();
    }

    private Map<String, Object> setting(DimmingPoint down, DimmingPoint up) {
        return Map.of(
                "flickers", curve.flickers(down),
                "angle", PlainNumber.fixed(down.degrees(), 0),
                "down", amount(down.current(), "A"),
                "level", amount(100 * curve.level(down.current()), "%"),
                "up", amount(up.current(), "A"),
                "power", amount(down.stress().linePower(), "W"),
                "bleeder", amount(down.stress().bleederLoss(), "W"),
                "spike", amount(down.stress().peakLineCurrent(), "A"),
                "least", curve.isWatched(down) ? amount(down.stress().leastTriacCurrent(), "A") : "",
                "out", curve.goesOut(down));
    }

    private Map<String, Object> setting(SettingVerdict setting) {
        return Map.of(
                "angle", SettingVerdict.text(setting.degrees()),
                "predicted", amount(curve.currentAt(setting.degrees()), "A"),
                "simulated", text(setting.simulated("string.current.mean"), "A"),
                "agree", setting.run().count(Outcome.AGREES),
                "differ", setting.run().count(Outcome.DIFFERS),
                "without", setting.run().count(Outcome.NO_VERDICT),
                "run", setting.run().name());
    }

    private static String amount(double value, String unit) {
        return text(OptionalDouble.of(value), unit);
    }
}
