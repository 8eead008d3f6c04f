package lampproof.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lampproof.compare.Outcome;
import lampproof.compare.SettingVerdict;
import lampproof.design.Design;
import lampproof.dimming.DimmingCurve;
import lampproof.dimming.DimmingFigures;
import lampproof.page.RunRecord.Provenance;

/** The page of a dimming curve. */
public final class DimmingPage {

    /**
     * What the page shows.
     *
     * @param edge edge of the dimmer
     * @param facts the lamp, its dimmer, and who made the page
     * @param good whether nothing is wrong
     * @param heading its outcome in words
     * @param sentence its outcome in a sentence or two
     * @param sections the sections of the page
     */
    record View(String edge, List<Fact> facts, boolean good, String heading, String sentence, List<Section> sections) {}

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
        return PageTemplates.fill("dimming.ftlh", view(curve, design, simulated, provenance));
    }

    static View view(DimmingCurve curve, Design design, List<SettingVerdict> simulated, Provenance provenance) {
        DimmingPage page = new DimmingPage(curve, design, simulated, provenance);
        return new View(
                curve.dimming().edge().word(),
                page.facts(),
                page.good(),
                page.heading(),
                page.sentence(),
                page.sections());
    }

    private List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section("figures", "Figures", DimmingRows.of(DimmingFigures.of(curve))));
        sections.add(new Section("off", "Dimmer off", DimmingRows.of(DimmingFigures.off(curve))));
        sections.add(new Section("curves", "Curves", new Plots(new DimmingPlots(curve, simulated).views())));
        if (!simulated.isEmpty()) {
            sections.add(new Section("simulated", "Simulated", SimulatedRows.of(curve, simulated)));
        }
        sections.add(new Section("settings", "Settings", SettingRows.of(curve)));
        return sections;
    }

    private List<Fact> facts() {
        return List.of(
                new Fact("Converter", value("driver.topology")),
                new Fact("Control law", value("driver.control")),
                new Fact("Line", value("line.voltage") + ", " + value("line.frequency")),
                new Fact("String", value("string.voltage") + ", " + value("string.current")),
                new Fact("Dimmer", value("dimmer.edge") + " edge, " + value("dimmer.capacitance")),
                new Fact("Bleeder", value("bleeder.resistance") + ", holds " + value("bleeder.hold_current")),
                new Fact("Program", provenance.program()),
                new Fact("Made", provenance.date()));
    }

    private String value(String name) {
        return PartRows.value(design, name);
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
}
