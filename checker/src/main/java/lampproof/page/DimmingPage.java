package lampproof.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
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
     * @param lamp the lamp and its dimmer in one line
     * @param good whether nothing is wrong
     * @param heading its outcome in words
     * @param sentence its outcome in a sentence or two
     * @param headline the lamp at the dimmer in a dozen values
     * @param sections the sections of the page
     * @param provenance who made the page
     */
    record View(
            String lamp,
            boolean good,
            String heading,
            String sentence,
            List<Fact> headline,
            List<Section> sections,
            Provenance provenance) {}

    /** Figures of the headline with their labels. */
    private static final Map<String, String> LABELS = Map.ofEntries(
            Map.entry("level.lowest", "Lowest level"),
            Map.entry("pop_on", "Pop-on"),
            Map.entry("drop_out", "Drop-out"),
            Map.entry("travel.dead.below", "Dead travel from off"),
            Map.entry("travel.dead.above", "Dead travel from full"),
            Map.entry("monotonic", "Dims without a step back"),
            Map.entry("half_cycles.alike", "Half cycles alike"),
            Map.entry("bleeder.loss", "Bleeder, greatest loss"),
            Map.entry("line.current.peak", "Firing spike"),
            Map.entry("misfire.margin", "Margin over holding current"),
            Map.entry("off.voltage", "Voltage with the dimmer off"),
            Map.entry("off.glow", "Glow with the dimmer off"));

    private final DimmingCurve curve;
    private final Design design;
    private final List<SettingVerdict> simulated;

    private DimmingPage(DimmingCurve curve, Design design, List<SettingVerdict> simulated) {
        this.curve = curve;
        this.design = design;
        this.simulated = simulated.stream()
                .sorted(Comparator.comparingDouble(SettingVerdict::degrees))
                .toList();
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
        DimmingPage page = new DimmingPage(curve, design, simulated);
        return new View(
                page.lamp(),
                page.good(),
                page.heading(),
                page.sentence(),
                page.headline(),
                page.sections(),
                provenance);
    }

    private List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        sections.add(Section.open("curves", "Dimming curves", new Plots(new DimmingPlots(curve, simulated).views())));
        if (!simulated.isEmpty()) {
            sections.add(Section.open("simulated", "Simulated settings", SimulatedRows.of(curve, simulated)));
        }
        sections.add(Section.open("figures", "Figures", DimmingRows.of(DimmingFigures.of(curve))));
        sections.add(Section.open("off", "Dimmer off", DimmingRows.of(DimmingFigures.off(curve))));
        sections.add(Section.folded("settings", "All settings", SettingRows.of(curve)));
        return sections;
    }

    private List<Fact> headline() {
        return Stream.concat(DimmingFigures.of(curve).stream(), DimmingFigures.off(curve).stream())
                .filter(figure -> LABELS.containsKey(figure.name()))
                .map(figure -> new Fact(LABELS.get(figure.name()), DimmingRows.text(figure)))
                .toList();
    }

    private String lamp() {
        return LampLine.of(design) + "; dimmer " + value("dimmer.edge") + " edge, " + value("dimmer.capacitance")
                + "; bleeder " + value("bleeder.resistance") + ", holds " + value("bleeder.hold_current");
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
                + (simulated.isEmpty()
                        ? "Nothing was simulated; --prove simulates some settings."
                        : simulatedSentence());
    }

    private String triacSentence() {
        long watched = curve.down().stream().filter(curve::isWatched).count();
        return watched == 0
                ? ""
                : "The triac goes out at " + curve.misfires().size() + " of " + watched + " settings. ";
    }

    private String simulatedSentence() {
        long agree = simulated.stream()
                .filter(setting -> setting.run().worst() == Outcome.AGREES)
                .count();
        return agree + " of " + simulated.size() + " simulated settings agree in every figure.";
    }
}
