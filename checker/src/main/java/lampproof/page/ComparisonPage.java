package lampproof.page;

import java.util.List;
import lampproof.choice.Candidate;
import lampproof.choice.Comparison;
import lampproof.compare.RunVerdict;
import lampproof.unit.Engineering;

/** The page of a comparison: the recommendation, both drivers side by side, why they differ, and the design space. */
public final class ComparisonPage {

    /**
     * What the page shows.
     *
     * @param winner name of the recommended driver
     * @param recommendation the recommendation in a sentence or two
     * @param lamp the lamp in one line
     * @param headline both drivers in a dozen values
     * @param broken rules that the finalists break, a sentence without its point each
     * @param verdicts the verdicts of the simulations of the finalists; none when nothing was simulated
     * @param sections the sections of the page
     * @param program name and version of this program
     */
    record View(
            String winner,
            String recommendation,
            String lamp,
            FinalistHeadline headline,
            List<String> broken,
            List<Simulated> verdicts,
            List<Section> sections,
            String program) {}

    /**
     * The verdict of a simulation.
     *
     * @param name name of the driver, and of its run folder
     * @param verdict the verdict
     */
    record Simulated(String name, VerdictSentence verdict) {

        static Simulated of(RunVerdict run) {
            return new Simulated(run.name(), VerdictSentence.of(run));
        }
    }

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
     * @param verdicts the verdicts of the simulations of the finalists, in their order; none when nothing was simulated
     * @param program name and version of this program
     */
    public static String html(Comparison comparison, List<RunVerdict> verdicts, String program) {
        return PageTemplates.fill("comparison.ftlh", view(comparison, verdicts, program));
    }

    static View view(Comparison comparison, List<RunVerdict> verdicts, String program) {
        ComparisonPage page = new ComparisonPage(comparison);
        return new View(
                page.finalists.get(0).arrangement().topology().word(),
                comparison.recommendation(),
                page.lamp(),
                FinalistHeadline.of(page.finalists),
                BrokenRules.of(comparison),
                verdicts.stream().map(Simulated::of).toList(),
                page.sections(),
                program);
    }

    private List<Section> sections() {
        return List.of(
                Section.open("circuits", "Circuits", FinalistCircuits.of(finalists)),
                Section.open("losses", "Losses", FinalistLosses.of(finalists)),
                Section.open("waveforms", "Waveforms over the line half cycle", new Plots(FinalistPlots.of(finalists))),
                Section.open("differences", "Differences", DifferenceRows.of(comparison)),
                Section.open("beside", "All characteristics", SideBySide.of(comparison)),
                Section.open("rules", "Rules", FinalistRules.of(finalists)),
                Section.folded("design-space", "Design space", DesignSpaceRows.of(comparison)),
                Section.folded("weights", "Other weights", WeightVariationRows.of(comparison)),
                Section.folded("sensitivity", "Sensitivity", Tornados.of(finalists)),
                Section.folded("rejections", "Rejected arrangements", RejectionRows.of(comparison)));
    }

    private String lamp() {
        String power = Engineering.digits(3).text(comparison.space().lamp().power(), "W");
        int drivers = comparison.space().candidates().size();
        String dimmer = value("dimmer.edge");
        return "line " + value("line.voltage") + ", " + value("line.frequency") + "; string power " + power + "; "
                + (dimmer.equals("none") ? "no dimmer" : dimmer + "-edge dimmer") + "; air "
                + value("ambient.temperature") + "; " + drivers + " drivers compared";
    }

    private String value(String name) {
        return PartRows.value(comparison.winner().design(), name);
    }
}
